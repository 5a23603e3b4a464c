package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.trade.fit.Iso286;
import chargehand.trade.fit.ToleranceClass;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Readings of single texts that only kit and rack files have; each throws {@link Unreadable} with what would do. */
public final class KitText {
    private static final Pattern TO = Pattern.compile("\\s+to\\s+");
    private static final int SAID_BACK = 40;

    private KitText() {}

    /** The unit of a file's bare numbers. */
    public static LengthUnit unit(String text) {
        return oneOf(text, List.of(LengthUnit.values()), LengthUnit::symbol);
    }

    /** One of a few words, in any case. */
    public static <T> T oneOf(String text, List<T> all, Function<T, String> word) {
        return all.stream()
                .filter(each -> word.apply(each).equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new Unreadable(quoted(text) + " will not do here: write "
                        + or(all.stream().map(word).toList()) + "."));
    }

    /** An enum constant by its name, small and with spaces. */
    public static <E extends Enum<E>> E word(String text, Class<E> type) {
        return oneOf(text, List.of(type.getEnumConstants()), KitText::small);
    }

    private static String small(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Yes or no. */
    static boolean yes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw new Unreadable(quoted(text) + " will not do here: write yes or no.");
        };
    }

    /** A length of more than nothing. */
    public static Written positive(String text, LengthUnit bareUnit) {
        Written written = LengthReader.read(text, bareUnit);
        if (!written.length().isPositive()) {
            throw new Unreadable(quoted(text) + " will not do here: it must be more than nought.");
        }
        return written;
    }

    /** A length of nothing or more. */
    static Length notNegative(String text, LengthUnit bareUnit) {
        Length length = LengthReader.read(text, bareUnit).length();
        if (length.isNegative()) {
            throw new Unreadable(quoted(text) + " will not do here: it cannot be less than nought.");
        }
        return length;
    }

    /** From one length to another, {@code 1/8 to 3 1/2}; a bare first one is in the unit of the second. */
    static Limits span(String text, LengthUnit bareUnit) {
        String[] ends = ends(text, "1/8 to 3 1/2");
        Written most = positive(ends[1], bareUnit);
        Length least = notNegative(ends[0], most.unit());
        if (most.length().isLessThan(least)) {
            throw new Unreadable(quoted(text) + " runs backwards: write the smaller size first.");
        }
        return new Limits(least, most.length());
    }

    /** From one pitch to another, in either order, as the lengths from thread to thread. */
    static Limits pitches(String text, LengthUnit bareUnit) {
        String[] ends = ends(text, "28 tpi to 6 tpi");
        Length one = Notations.PITCH.read(ends[0], bareUnit).length();
        Length other = Notations.PITCH.read(ends[1], bareUnit).length();
        return new Limits(Length.least(one, other), Length.most(one, other));
    }

    /** The two ends of a span. */
    static String[] ends(String text, String example) {
        String[] ends = TO.split(text.strip(), -1);
        if (ends.length != 2) {
            throw new Unreadable(
                    quoted(text) + " is no span: write two sizes with to between them, as in " + example + ".");
        }
        return ends;
    }

    /** A thread's designation in its usual form. */
    static String thread(String text) {
        return ScrewThread.parse(text).designation();
    }

    /** The ISO 286 class of a hole of this size, such as {@code H7}. */
    static String holeClass(String text, Length size) {
        ToleranceClass read = Iso286.limits(size, text).toleranceClass();
        if (!read.hole()) {
            throw new Unreadable(quoted(text) + " is the class of a shaft: write one of a hole, such as H7.");
        }
        return read.toString();
    }

    /** A text said back within a sentence. */
    static String quoted(String text) {
        return "'" + (text.length() <= SAID_BACK ? text : text.substring(0, SAID_BACK) + "…") + "'";
    }

    private static String or(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.getFirst() : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
