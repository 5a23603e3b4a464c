package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Nearest64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A nominal inch size as designations write it: {@code 1 1/4}, {@code 3/8}, {@code .5}, or a screw number such as
 * {@code #10}.
 *
 * @param text in its usual form
 * @param diameter what it means
 */
record ThreadSize(String text, Length diameter) {
    /** The pattern of a size inside a designation; it has no groups. */
    static final String PATTERN =
            "(?:(?:#|NO\\.? ?)\\d{1,2}|\\d{1,2}[ -]\\d{1,2}/\\d{1,2}|\\d{1,2}/\\d{1,2}|\\d{0,2}\\.\\d+|\\d{1,2})";

    private static final Pattern NUMBER = Pattern.compile("(?:#|NO\\.? ?)(\\d{1,2})");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,2})[ -])?(\\d{1,2})/(\\d{1,2})");
    private static final double NUMBER_0_INCHES = 0.060;
    private static final double NUMBER_STEP_INCHES = 0.013;

    /** Reads text that {@link #PATTERN} matches; empty where it can be no size, such as 3/0. */
    static Optional<ThreadSize> find(String text) {
        Matcher number = NUMBER.matcher(text);
        if (number.matches()) {
            return Optional.of(ofNumber(Integer.parseInt(number.group(1))));
        }
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            return ofFraction(fraction);
        }
        return ofDecimal(text);
    }

    /** A decimal that is a 64th goes by its fraction: .5 is 1/2. */
    private static Optional<ThreadSize> ofDecimal(String text) {
        Length diameter = Length.in(Double.parseDouble(text));
        Nearest64 nearest = Nearest64.of(diameter);
        String name = nearest.isExact() ? nearest.fraction() : "0".repeat(text.startsWith(".") ? 1 : 0) + text;
        return Optional.of(new ThreadSize(name, diameter))
                .filter(size -> size.diameter().isPositive());
    }

    /** Screw numbers, ASME B1.1: number 0 is 0.060 in, each number 0.013 in more. */
    static ThreadSize ofNumber(int number) {
        return new ThreadSize("#" + number, Length.in(NUMBER_0_INCHES + number * NUMBER_STEP_INCHES));
    }

    private static Optional<ThreadSize> ofFraction(Matcher fraction) {
        int whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
        int numerator = Integer.parseInt(fraction.group(2));
        int denominator = Integer.parseInt(fraction.group(3));
        if (denominator == 0 || numerator == 0) {
            return Optional.empty();
        }
        String text = (whole == 0 ? "" : whole + " ") + numerator + "/" + denominator;
        return Optional.of(new ThreadSize(text, Length.inch((long) whole * denominator + numerator, denominator)));
    }
}
