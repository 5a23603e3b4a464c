package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.trade.drill.Drill;
import chargehand.trade.drill.DrillSeries;
import chargehand.trade.drill.Drills;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Drills as a shop counts them: a set, {@code fraction 1/16 to 1 by 1/64}, {@code metric 1 to 13 by 0.1},
 * {@code number 60 to 1}, {@code letter A to Z}, or a single one, {@code 17.5 mm}.
 */
final class DrillText {
    private static final Pattern STEPPED = Pattern.compile("(?i)(fraction|metric)\\s+(.+)\\s+to\\s+(.+)\\s+by\\s+(.+)");
    private static final Pattern NAMED = Pattern.compile("(?i)(number|letter)\\s+(\\S+)\\s+to\\s+(\\S+)");
    private static final int LONGEST = 80;
    private static final int MOST_IN_SET = 1000;

    private DrillText() {}

    /** The drills that a text means. */
    static List<Drill> read(String text, LengthUnit bareUnit) {
        if (text.length() > LONGEST) {
            throw unreadable(text);
        }
        Matcher stepped = STEPPED.matcher(text);
        if (stepped.matches()) {
            return stepped(text, stepped);
        }
        Matcher named = NAMED.matcher(text);
        return named.matches() ? named(text, named) : List.of(single(text, bareUnit));
    }

    private static Drill single(String text, LengthUnit bareUnit) {
        boolean bare = bareUnit == LengthUnit.INCH && text.matches("[\\d.,]+");
        return Drill.parse(bare ? text + " in" : text);
    }

    private static List<Drill> stepped(String text, Matcher set) {
        LengthUnit unit =
                set.group(1).toLowerCase(Locale.ROOT).equals("metric") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        Length from = KitText.positive(set.group(2), unit).length();
        Length to = KitText.positive(set.group(3), unit).length();
        Written step = KitText.positive(set.group(4), unit);
        if (to.isLessThan(from) || to.minus(from).over(step.length()) > MOST_IN_SET) {
            throw new Unreadable(KitText.quoted(text)
                    + " is no set of drills: write the smallest first and a step that gives at most " + MOST_IN_SET
                    + ".");
        }
        List<Drill> drills = new ArrayList<>();
        for (Length size = from; !size.isMoreThan(to); size = size.plus(step.length())) {
            drills.add(Drill.parse(LengthText.exact(size, unit)));
        }
        return drills;
    }

    private static List<Drill> named(String text, Matcher set) {
        String before = set.group(1).toLowerCase(Locale.ROOT) + " ";
        Drill one = Drill.parse(before + set.group(2));
        Drill other = Drill.parse(before + set.group(3));
        DrillSeries series = one.series();
        if (other.series() != series) {
            throw unreadable(text);
        }
        Length least = Length.least(one.diameter(), other.diameter());
        Length most = Length.most(one.diameter(), other.diameter());
        return Drills.list(series).stream()
                .filter(drill ->
                        !drill.diameter().isLessThan(least) && !drill.diameter().isMoreThan(most))
                .toList();
    }

    private static Unreadable unreadable(String text) {
        return new Unreadable(
                KitText.quoted(text) + " names no drills: write fraction 1/16 to 1 by 1/64, metric 1 to 13 by 0.1,"
                        + " number 60 to 1, letter A to Z, or one drill such as 17.5 mm.");
    }
}
