package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;

/**
 * Limits of ISO metric threads, ISO 965-1. The tables hold grade 6; the other grades lie four steps of the R40 series apart,
 * as they do in the standard.
 */
final class MetricTolerances {
    private static final int TABLE_GRADE = 6;
    private static final double SAME_PITCH_MM = 1e-6;
    private static final Source SOURCE = Source.memory("ISO 965-1");

    private MetricTolerances() {}

    /** None for a pitch or diameter that the standard gives no tolerance for. */
    static Optional<ThreadLimits> find(ScrewThread thread, String fit) {
        MetricClass.Pair classes = MetricClass.Pair.parse(fit);
        Optional<DiameterLimits> external = external(thread, classes.outside());
        Optional<DiameterLimits> internal = internal(thread, classes.inside());
        if (external.isEmpty() && internal.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ThreadLimits(classes.toString(), external, internal, SOURCE));
    }

    private static Optional<DiameterLimits> external(ScrewThread thread, MetricClass outside) {
        Optional<Length> deviation = deviation(thread, Character.toString(outside.position()));
        Optional<Length> crest = crest(thread, "Td6", outside.crestGrade());
        Optional<Length> pitch = pitch(thread, "Td26", outside.pitchGrade());
        if (deviation.isEmpty() || crest.isEmpty() || pitch.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DiameterLimits(
                SizeLimits.below(thread.major().minus(deviation.get()), crest.get()),
                SizeLimits.below(thread.effective().minus(deviation.get()), pitch.get()),
                SizeLimits.atMost(thread.minorInternal().minus(deviation.get()))));
    }

    private static Optional<DiameterLimits> internal(ScrewThread thread, MetricClass inside) {
        Optional<Length> deviation = deviation(thread, inside.position() == 'G' ? "g" : "h");
        Optional<Length> crest = crest(thread, "TD16", inside.crestGrade());
        Optional<Length> pitch = pitch(thread, "TD26", inside.pitchGrade());
        if (deviation.isEmpty() || crest.isEmpty() || pitch.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DiameterLimits(
                SizeLimits.atLeast(thread.major().plus(deviation.get())),
                SizeLimits.above(thread.effective().plus(deviation.get()), pitch.get()),
                SizeLimits.above(thread.minorInternal().plus(deviation.get()), crest.get())));
    }

    private static Optional<Length> deviation(ScrewThread thread, String position) {
        return position.equals("h")
                ? Optional.of(Length.ZERO)
                : crestRow(thread).flatMap(row -> micrometres(row, position));
    }

    private static Optional<Length> crest(ScrewThread thread, String column, int grade) {
        return crestRow(thread).flatMap(row -> graded(row, column, grade));
    }

    private static Optional<Length> pitch(ScrewThread thread, String column, int grade) {
        return Tables.PITCH.rows().stream()
                .filter(row -> isPitch(row, thread)
                        && thread.major().mm() > row.number("over")
                        && thread.major().mm() <= row.number("up_to"))
                .findFirst()
                .flatMap(row -> graded(row, column, grade));
    }

    private static Optional<Row> crestRow(ScrewThread thread) {
        return Tables.CREST.rows().stream().filter(row -> isPitch(row, thread)).findFirst();
    }

    private static boolean isPitch(Row row, ScrewThread thread) {
        return Math.abs(row.number("pitch") - thread.pitch().inMm()) < SAME_PITCH_MM;
    }

    private static Optional<Length> graded(Row row, String column, int grade) {
        return row.findNumber(column)
                .map(six -> PreferredNumbers.along(six, (grade - TABLE_GRADE) * PreferredNumbers.STEPS_PER_GRADE))
                .map(MetricTolerances::length);
    }

    private static Optional<Length> micrometres(Row row, String column) {
        return row.findNumber(column).map(MetricTolerances::length);
    }

    private static Length length(double micrometres) {
        return Length.mm(micrometres / 1000);
    }

    private static final class Tables {
        private static final Table CREST = Table.read(MetricTolerances.class, "metric-crest-tolerances.csv");
        private static final Table PITCH = Table.read(MetricTolerances.class, "metric-pitch-tolerances.csv");
    }
}
