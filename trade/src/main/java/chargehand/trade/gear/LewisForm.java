package chargehand.trade.gear;

import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Optional;

/** Lewis's form factor: how well the shape of a tooth stands up to a load at its tip. */
final class LewisForm {
    private static final Table TABLE = Table.read(LewisForm.class, "lewis-form.csv");
    private static final double ANGLE = 20;
    private static final double NEAR = 1e-9;

    private LewisForm() {}

    /** The factor Y of a wheel; empty where its teeth are not those of the table, or too few. */
    static Optional<Double> of(Spur spur) {
        boolean tabled = spur.system().equals(ToothSystem.of(Proportions.FULL, spur.pressureAngle()))
                && Math.abs(spur.pressureAngle().degrees() - ANGLE) < NEAR
                && spur.shift() == 0;
        List<Row> rows = TABLE.rows();
        return tabled && spur.teeth() >= rows.getFirst().number("teeth")
                ? Optional.of(between(rows, spur.teeth()))
                : Optional.empty();
    }

    /** Between two rows the factor goes with one over the teeth, as far as a rack. */
    private static double between(List<Row> rows, int teeth) {
        Row below = rows.getFirst();
        for (Row above : rows) {
            if (above.number("teeth") >= teeth) {
                return teeth == above.number("teeth") ? above.number("form") : between(below, above, teeth);
            }
            below = above;
        }
        return below.number("form");
    }

    private static double between(Row below, Row above, int teeth) {
        double part =
                (1 / below.number("teeth") - 1.0 / teeth) / (1 / below.number("teeth") - 1 / above.number("teeth"));
        return below.number("form") + part * (above.number("form") - below.number("form"));
    }

    static Source source() {
        return TABLE.source();
    }
}
