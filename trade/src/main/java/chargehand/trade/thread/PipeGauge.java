package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;

/**
 * Where the gauge plane of a sealing pipe thread lies.
 *
 * @param length from the small end of the outside thread to the gauge plane, where its diameters are the basic ones
 * @param tolerance how far the gauge plane may lie off, either way
 * @param usefulLength least length of useful thread on the outside piece
 */
public record PipeGauge(Length length, Length tolerance, Length usefulLength) {
    /** Taper on diameter: one in sixteen. */
    public static final double TAPER_ONE_IN = 16;

    static Optional<PipeGauge> find(ScrewThread thread) {
        return switch (thread.series()) {
            case BSP_TAPER_OUTSIDE, BSP_TAPER_INSIDE, BSP_PARALLEL_INSIDE ->
                Listed.TABLE.rows().stream()
                        .filter(row -> row.text("size").equals(thread.size()))
                        .map(PipeGauge::of)
                        .findFirst();
            case METRIC_COARSE,
                    METRIC_FINE,
                    UNC,
                    UNF,
                    UN,
                    BSW,
                    BSF,
                    WHITWORTH,
                    BSP,
                    BA,
                    TRAPEZOIDAL,
                    ACME,
                    SQUARE,
                    BRASS,
                    CYCLE,
                    MODEL_ENGINEER,
                    CONDUIT -> Optional.empty();
        };
    }

    private static PipeGauge of(Row row) {
        return new PipeGauge(
                Length.mm(row.number("gauge_length_mm")),
                Length.mm(row.number("gauge_tolerance_mm")),
                Length.mm(row.number("useful_length_mm")));
    }

    /** Major diameter at the small end of an outside thread whose major diameter at the gauge plane is {@code major}. */
    public Length smallEnd(Length major) {
        return major.minus(length.times(1 / TAPER_ONE_IN));
    }

    private static final class Listed {
        private static final Table TABLE = Table.read(PipeGauge.class, "bspt.csv");
    }
}
