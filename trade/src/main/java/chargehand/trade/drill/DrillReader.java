package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Nearest64;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a drill by number, letter or size. */
final class DrillReader {
    private static final String WOULD_DO = ": write a drill as #7, letter F, 5.1 mm or 13/64.";
    private static final int MOST_CHARACTERS = 30;
    private static final Pattern NUMBER = Pattern.compile("(?:#|NO\\.?|NUMBER) ?(\\d{1,2})");
    private static final Pattern LETTER = Pattern.compile("(?:LETTER )?([A-Z])");
    private static final Length MOST = Length.mm(100);

    private DrillReader() {}

    static Drill read(String written, LengthUnit bareUnit) {
        String text = written.strip();
        if (text.isEmpty() || text.length() > MOST_CHARACTERS) {
            throw new Unreadable("this is not a drill" + WOULD_DO);
        }
        return findNamed(text).orElseGet(() -> sized(text, bareUnit));
    }

    /** A drill named by a number with its sign, or by a letter; empty for anything else. */
    static Optional<Drill> findNamed(String written) {
        String text = written.strip().toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher number = NUMBER.matcher(text);
        if (number.matches()) {
            return Optional.of(named(DrillSeries.NUMBER, "#" + Integer.parseInt(number.group(1))));
        }
        Matcher letter = LETTER.matcher(text);
        return letter.matches()
                ? Optional.of(named(DrillSeries.LETTER, "letter " + letter.group(1)))
                : Optional.empty();
    }

    private static Drill named(DrillSeries series, String designation) {
        return Drills.list(series).stream()
                .filter(drill -> drill.designation().equals(designation))
                .findFirst()
                .orElseThrow(() -> new Unreadable(
                        "there is no drill " + designation + ": numbers run from #1 to #80 and letters from A to Z."));
    }

    private static Drill sized(String text, LengthUnit bareUnit) {
        Written size = LengthReader.read(text, bareUnit);
        Length diameter = size.length();
        if (!diameter.isPositive() || diameter.isMoreThan(MOST)) {
            throw new Unreadable("'" + text + "' is not the size of a drill up to "
                    + LengthText.in(MOST, LengthUnit.MILLIMETRE) + WOULD_DO);
        }
        return switch (size.unit()) {
            case MILLIMETRE -> Drills.metric(diameter);
            case INCH ->
                Nearest64.of(diameter).isExact()
                        ? Drills.fraction(diameter)
                        : new Drill(DrillSeries.DECIMAL_INCH, LengthText.in(diameter, LengthUnit.INCH), diameter);
        };
    }
}
