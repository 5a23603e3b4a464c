package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Nearest64;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The drills that standards list, from 0.2 mm to 100 mm. */
public final class Drills {
    private static final int FINEST_STEP_DECIMALS = 2;

    private Drills() {}

    /** Every listed drill, smallest first. */
    public static List<Drill> list() {
        return Listed.ALL;
    }

    /** The listed drills of one series, smallest first. */
    public static List<Drill> list(DrillSeries series) {
        return Objects.requireNonNull(Listed.BY_SERIES.get(series));
    }

    /** The drill of a series with this diameter to the nanometre. */
    public static Optional<Drill> find(DrillSeries series, Length diameter) {
        return list(series).stream()
                .filter(drill -> drill.diameter().equals(diameter))
                .findFirst();
    }

    static Drill metric(Length diameter) {
        return new Drill(DrillSeries.METRIC, LengthText.mm(diameter, LengthText.MICROMETRE), diameter);
    }

    static Drill fraction(Length diameter) {
        return new Drill(DrillSeries.FRACTION, Nearest64.of(diameter).fraction() + " in", diameter);
    }

    private static final class Listed {
        private static final Map<DrillSeries, List<Drill>> BY_SERIES = read();
        private static final List<Drill> ALL = BY_SERIES.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparing(Drill::diameter))
                .toList();

        private static Map<DrillSeries, List<Drill>> read() {
            var drills = new EnumMap<DrillSeries, List<Drill>>(DrillSeries.class);
            drills.put(
                    DrillSeries.METRIC,
                    stepped("metric-drills.csv", "from_mm", "step_mm").stream()
                            .map(mm -> metric(Length.mm(mm)))
                            .toList());
            drills.put(
                    DrillSeries.FRACTION,
                    stepped("fraction-drills.csv", "from_64ths", "step_64ths").stream()
                            .map(parts -> fraction(Length.inch(Math.round(parts), 64)))
                            .toList());
            drills.put(DrillSeries.NUMBER, named("number", "#", DrillSeries.NUMBER));
            drills.put(DrillSeries.LETTER, named("letter", "letter ", DrillSeries.LETTER));
            drills.put(DrillSeries.DECIMAL_INCH, List.of());
            return drills;
        }

        private static List<Drill> named(String column, String before, DrillSeries series) {
            return Table.read(Drills.class, column + "-drills.csv").rows().stream()
                    .map(row -> new Drill(series, before + row.text(column), Length.in(row.number("diameter_in"))))
                    .sorted(Comparator.comparing(Drill::diameter))
                    .toList();
        }

        /** Sizes from each row of the table to the next in the row's steps; a step of nothing stands for the row alone. */
        private static List<Double> stepped(String table, String from, String step) {
            List<Row> rows = Table.read(Drills.class, table).rows();
            var sizes = new ArrayList<Double>();
            for (int i = 0; i < rows.size(); i++) {
                double first = rows.get(i).number(from);
                double apart = rows.get(i).number(step);
                long count = apart > 0 ? Math.round((rows.get(i + 1).number(from) - first) / apart) : 1;
                for (long n = 0; n < count; n++) {
                    sizes.add(rounded(first + n * apart));
                }
            }
            return sizes;
        }

        private static double rounded(double size) {
            double scale = Math.pow(10, FINEST_STEP_DECIMALS);
            return Math.round(size * scale) / scale;
        }
    }
}
