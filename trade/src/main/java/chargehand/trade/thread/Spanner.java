package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;

/**
 * The spanner for the usual hexagon of a bolt or nut of this thread.
 *
 * @param flats width across the flats of the hexagon, the most it may be
 * @param called what is stamped on the spanner
 * @param older width across the flats of the hexagon met on earlier work, where it differs
 * @param source the standard that gives the hexagon
 */
public record Spanner(Length flats, String called, Optional<Length> older, String source) {

    /** The spanner for the thread; none where no hexagon is usual or known. */
    public static Optional<Spanner> find(ScrewThread thread) {
        return kind(thread.series())
                .flatMap(kind -> Listed.TABLE.rows().stream()
                        .filter(row -> row.text("kind").equals(kind)
                                && row.text("size").equals(thread.size()))
                        .findFirst()
                        .flatMap(Spanner::of));
    }

    private static Optional<String> kind(ThreadSeries series) {
        return switch (series) {
            case METRIC_COARSE, METRIC_FINE -> Optional.of("METRIC");
            case UNC, UNF -> Optional.of("UNIFIED");
            case BSW, BSF -> Optional.of("WHITWORTH");
            case BA -> Optional.of("BA");
            case UN,
                    WHITWORTH,
                    BSP,
                    BSP_TAPER_OUTSIDE,
                    BSP_TAPER_INSIDE,
                    BSP_PARALLEL_INSIDE,
                    TRAPEZOIDAL,
                    ACME,
                    SQUARE,
                    BRASS,
                    CYCLE,
                    MODEL_ENGINEER,
                    CONDUIT -> Optional.empty();
        };
    }

    /** A hexagon that only earlier work has is the one to know. */
    private static Optional<Spanner> of(Row row) {
        Optional<Length> flats = length(row, "flats");
        Optional<Length> older = length(row, "older");
        return flats.or(() -> older)
                .map(width -> new Spanner(
                        width, row.text("called"), flats.isPresent() ? older : Optional.empty(), row.text("source")));
    }

    private static Optional<Length> length(Row row, String column) {
        boolean metric = row.text("unit").equals("mm");
        return row.findNumber(column).map(width -> metric ? Length.mm(width) : Length.in(width));
    }

    private static final class Listed {
        private static final Table TABLE = Table.read(Spanner.class, "spanners.csv");
    }
}
