package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Limits of ISO metric trapezoidal threads, ISO 2903. The effective tolerance of grade 6 is Td2 = 90 P^0.4 d^0.1 micrometres, d
 * the geometric mean of a range of diameters, rounded to the R40 series; the inside one is five steps of the series above it, and
 * a grade is four steps from the next. Screws of several starts have the effective tolerance widened.
 */
final class TrapezoidalTolerances {
    private static final Source SOURCE = Source.memory("ISO 2903:1993");
    private static final List<String> OUTSIDE = List.of("7e", "8e", "8c", "9c");
    private static final List<String> INSIDE = List.of("7H", "8H", "9H");
    private static final Pattern CLASSES = Pattern.compile("([789][a-z])?(?:\\s*/\\s*)?([789]H)?");

    /** Bounds of the ranges of diameter, each with its upper one. */
    private static final List<Double> RANGES = List.of(5.6, 11.2, 22.4, 45.0, 90.0, 180.0, 355.0);

    /** How the effective tolerance grows with two, three, four, and five or more starts. */
    private static final List<Double> WIDENED = List.of(1.0, 1.12, 1.25, 1.4, 1.6);

    private static final int FORMULA_GRADE = 6;
    private static final int INSIDE_STEPS = 5;
    private static final double MINOR_OF_EFFECTIVE = 1.25;
    private static final double SAME_PITCH_MM = 1e-6;

    private final ScrewThread thread;
    private final Row row;
    private final double rangeMean;

    private TrapezoidalTolerances(ScrewThread thread, Row row, double rangeMean) {
        this.thread = thread;
        this.row = row;
        this.rangeMean = rangeMean;
    }

    /** None for a pitch or diameter that the standard gives no tolerance for. */
    static Optional<ThreadLimits> find(ScrewThread thread, String fit) {
        Matcher classes = CLASSES.matcher(fit.strip());
        if (!classes.matches()) {
            throw noSuch(fit);
        }
        String outside = Optional.ofNullable(classes.group(1)).orElse("7e");
        String inside = Optional.ofNullable(classes.group(2)).orElse("7H");
        if (!OUTSIDE.contains(outside) || !INSIDE.contains(inside)) {
            throw noSuch(fit);
        }
        return row(thread)
                .flatMap(row -> rangeMean(thread)
                        .map(mean -> new TrapezoidalTolerances(thread, row, mean).limits(outside, inside)));
    }

    private static Unreadable noSuch(String fit) {
        return new Unreadable("'" + fit + "' is not a class of trapezoidal thread: outside "
                + String.join(", ", OUTSIDE) + ", inside " + String.join(", ", INSIDE) + ", or both such as 7e/7H.");
    }

    private static Optional<Row> row(ScrewThread thread) {
        return Listed.TABLE.rows().stream()
                .filter(row -> Math.abs(row.number("pitch") - thread.pitch().inMm()) < SAME_PITCH_MM)
                .findFirst();
    }

    private static Optional<Double> rangeMean(ScrewThread thread) {
        double major = thread.major().mm();
        for (int i = 1; i < RANGES.size(); i++) {
            if (major > RANGES.get(i - 1) && major <= RANGES.get(i)) {
                return Optional.of(Math.sqrt(RANGES.get(i - 1) * RANGES.get(i)));
            }
        }
        return Optional.empty();
    }

    private ThreadLimits limits(String outside, String inside) {
        return new ThreadLimits(
                outside + "/" + inside, Optional.of(external(outside)), Optional.of(internal(inside)), SOURCE);
    }

    private DiameterLimits external(String outside) {
        Length deviation = micrometres(row.number(outside.substring(1)));
        Length effective = effective(grade(outside), 0);
        Length minor = effective.times(MINOR_OF_EFFECTIVE).plus(deviation);
        return new DiameterLimits(
                SizeLimits.below(thread.major(), micrometres(row.number("Td4"))),
                SizeLimits.below(thread.effective().minus(deviation), effective),
                SizeLimits.below(thread.core(), minor));
    }

    private DiameterLimits internal(String inside) {
        return new DiameterLimits(
                SizeLimits.atLeast(thread.majorInternal()),
                SizeLimits.above(thread.effective(), effective(grade(inside), INSIDE_STEPS)),
                SizeLimits.above(thread.minorInternal(), micrometres(row.number("TD14"))));
    }

    private static int grade(String written) {
        return written.charAt(0) - '0';
    }

    private Length effective(int grade, int moreSteps) {
        double formula = 90 * Math.pow(thread.pitch().inMm(), 0.4) * Math.pow(rangeMean, 0.1);
        double six = PreferredNumbers.along(formula, 0);
        int steps = (grade - FORMULA_GRADE) * PreferredNumbers.STEPS_PER_GRADE + moreSteps;
        return micrometres(
                PreferredNumbers.along(six, steps) * WIDENED.get(Math.min(thread.starts(), WIDENED.size()) - 1));
    }

    private static Length micrometres(double micrometres) {
        return Length.mm(micrometres / 1000);
    }

    private static final class Listed {
        private static final Table TABLE = Table.read(TrapezoidalTolerances.class, "trapezoidal-tolerances.csv");
    }
}
