package chargehand.trade.thread;

import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Inch threads by size, threads to the inch and series: {@code 1/2-13 UNC}, {@code 1/2 BSW}, {@code #10-32}, {@code 1 1/4 x
 * 16 Whit}, {@code UNC 1/4-20}. Where the series lists one pitch for the size it may be left out.
 */
final class InchNotation {
    private static final String SIZE = "(" + ThreadSize.PATTERN + ")";
    private static final String TPI = "(\\d{1,2} \\d/\\d|\\d{0,2}\\.\\d{1,4}|\\d{1,2})(?: ?TPI)?";
    private static final String WORD = "([A-Z][A-Z .]*)";
    private static final Pattern SIZE_FIRST = Pattern.compile(SIZE + "(?: ?[-X ] ?" + TPI + ")?[ -]*" + WORD);
    private static final Pattern WORD_FIRST = Pattern.compile(WORD + "[ -]*" + SIZE + "(?: ?[-X ] ?" + TPI + ")?");
    private static final Pattern BARE = Pattern.compile(SIZE + " ?[-X] ?" + TPI);
    private static final Pattern MIXED = Pattern.compile("(\\d{1,2}) (\\d)/(\\d)");
    private static final int FINEST_TPI = 100;

    private InchNotation() {}

    static Optional<ScrewThread> find(String body) {
        Matcher bare = BARE.matcher(body);
        if (bare.matches()) {
            return Optional.of(InchCall.of(bare.group(1), pitch(bare.group(2)), InchWord.NONE)
                    .thread());
        }
        Matcher sizeFirst = SIZE_FIRST.matcher(body);
        if (sizeFirst.matches()) {
            return find(sizeFirst.group(1), sizeFirst.group(2), sizeFirst.group(3));
        }
        Matcher wordFirst = WORD_FIRST.matcher(body);
        return wordFirst.matches()
                ? find(wordFirst.group(2), wordFirst.group(3), wordFirst.group(1))
                : Optional.empty();
    }

    private static Optional<ScrewThread> find(String size, @Nullable String tpi, String word) {
        return InchWord.find(word)
                .map(meant -> InchCall.of(size, pitch(tpi), meant).thread());
    }

    private static Optional<Pitch> pitch(@Nullable String tpi) {
        if (tpi == null) {
            return Optional.empty();
        }
        BigFraction threads = threads(tpi);
        if (threads.compareTo(BigFraction.ONE) < 0 || threads.compareTo(BigFraction.of(FINEST_TPI)) > 0) {
            throw new Unreadable(
                    "threads to the inch lie between 1 and " + FINEST_TPI + ", so " + tpi + " cannot be right.");
        }
        return Optional.of(Pitch.ofTpi(threads));
    }

    private static BigFraction threads(String tpi) {
        Matcher mixed = MIXED.matcher(tpi);
        if (!mixed.matches()) {
            return Double.parseDouble(tpi) > 0 ? Pitch.ofTpi(tpi).tpi() : BigFraction.ZERO;
        }
        int denominator = Integer.parseInt(mixed.group(3));
        return denominator == 0
                ? BigFraction.ZERO
                : BigFraction.of(Integer.parseInt(mixed.group(2)), denominator).add(Integer.parseInt(mixed.group(1)));
    }
}
