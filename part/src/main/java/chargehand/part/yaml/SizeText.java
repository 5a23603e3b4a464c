package chargehand.part.yaml;

import chargehand.measure.Deviations;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import chargehand.trade.drill.Drill;
import chargehand.trade.fit.Iso286;
import chargehand.trade.fit.ToleranceZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes with their tolerance, as on a drawing: {@code 25}, {@code 25 h7}, {@code 40 ±0.1}, {@code 25 +0/-0.05},
 * {@code (25)} for information only.
 */
final class SizeText {
    private static final Pattern BRACKETED = Pattern.compile("\\((.*)\\)");
    private static final Pattern LETTERED =
            Pattern.compile("(.*\\S)\\s+([A-Za-z]{1,2}\\s?\\d{1,2})|(.*\\d)([A-HJKMNPR-Za-hjkmnpr-z]{1,2}\\d{1,2})");
    private static final Pattern CLASS =
            Pattern.compile("(?i)(?:cd|ef|fg|js|z[abc]|[a-hjkmnp-vx-z])\\s?(?:0?[1-9]|0|1[0-8])");
    private static final Pattern EITHER_WAY = Pattern.compile("(.*?\\S)\\s*((?:±|\\+\\s?/?\\s?-).*)");
    private static final Pattern STACKED =
            Pattern.compile("(.*?\\S)\\s+((?:[+-][\\d.,][^/]*?|0[^/]*?)(?:\\s*/\\s*|\\s+)(?:[+-]|0).*)");

    private static final Length MOST_DEVIATION = Length.mm(100);

    /** Nothing longer is a size; what is longer is refused as no length. */
    static final int LONGEST = 80;

    private SizeText() {}

    /**
     * Reads a size.
     *
     * @param bareUnit the unit of a bare number; deviations take the unit of the size they stand behind
     * @throws Unreadable saying what was found and what would do
     */
    static Size read(String text, LengthUnit bareUnit) {
        if (text.length() > LONGEST) {
            return Size.general(Lengths.read(text, bareUnit));
        }
        String plain = text.replace('−', '-').replace('–', '-').strip();
        Matcher bracketed = BRACKETED.matcher(plain);
        if (bracketed.matches()) {
            return new Size(Lengths.read(bracketed.group(1), bareUnit), new Tolerance.Bracketed());
        }
        Matcher lettered = LETTERED.matcher(plain);
        if (lettered.matches()) {
            String size = lettered.group(1) == null ? lettered.group(3) : lettered.group(1);
            String code = lettered.group(2) == null ? lettered.group(4) : lettered.group(2);
            if (CLASS.matcher(code).matches()) {
                return lettered(Lengths.read(size, bareUnit), code);
            }
        }
        return withDeviations(plain, bareUnit);
    }

    /** Reads the size of a drill: as {@link #read}, or by its number or letter, such as {@code #7} or {@code letter F}. */
    static Size readDrill(String text, LengthUnit bareUnit) {
        if (text.length() > LONGEST) {
            return read(text, bareUnit);
        }
        return Drill.findNamed(text)
                .map(drill -> Size.general(new Written(text, drill.diameter(), LengthUnit.INCH)))
                .orElseGet(() -> read(text, bareUnit));
    }

    private static Size lettered(Written nominal, String code) {
        ToleranceZone zone = Iso286.limits(nominal.length(), code);
        return new Size(nominal, new Tolerance.Letters(zone.toleranceClass().toString(), zone.lower(), zone.upper()));
    }

    private static Size withDeviations(String text, LengthUnit bareUnit) {
        for (Pattern pattern : new Pattern[] {EITHER_WAY, STACKED}) {
            Matcher matcher = pattern.matcher(text);
            if (matcher.matches()) {
                Written nominal = Lengths.read(matcher.group(1), bareUnit);
                Deviations deviations = deviations(matcher.group(2), nominal.unit());
                return new Size(nominal, new Tolerance.Deviations(deviations.lower(), deviations.upper()));
            }
        }
        return Size.general(Lengths.read(text, bareUnit));
    }

    /**
     * Reads deviations.
     *
     * @throws Unreadable also when they are larger than any tolerance
     */
    static Deviations deviations(String text, LengthUnit bareUnit) {
        Deviations deviations = Deviations.read(text, bareUnit);
        Length most = Length.most(deviations.lower().abs(), deviations.upper().abs());
        if (most.isMoreThan(MOST_DEVIATION)) {
            throw new Unreadable("A deviation of " + LengthText.in(most, bareUnit)
                    + " is more than any tolerance: check the figure and its unit.");
        }
        return deviations;
    }

    /** Writes a size so that {@link #read} gives the same one back. */
    static String write(Size size) {
        String nominal = size.nominal().text();
        return switch (size.tolerance()) {
            case Tolerance.General() -> nominal;
            case Tolerance.Bracketed() -> "(" + nominal + ")";
            case Tolerance.Letters(var code, var lower, var upper) -> nominal + " " + code;
            case Tolerance.Deviations(var lower, var upper) ->
                nominal + " " + deviations(lower, upper, size.nominal().unit());
        };
    }

    private static String deviations(Length lower, Length upper, LengthUnit unit) {
        return lower.equals(upper.negated())
                ? "±" + figures(upper, unit)
                : signed(upper, unit) + "/" + signed(lower, unit);
    }

    private static String signed(Length deviation, LengthUnit unit) {
        return (deviation.isPositive() ? "+" : "") + figures(deviation, unit);
    }

    private static String figures(Length length, LengthUnit unit) {
        String exact = LengthText.exact(length, unit);
        return exact.substring(0, exact.length() - unit.symbol().length()).strip();
    }
}
