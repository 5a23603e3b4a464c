package chargehand.trade.published;

import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;

/** A textbook's example of turning a thin rod, which takes its force at the mean diameter. */
final class ThinRod {
    private static final double RUN_IN_MM = 2;
    private static final double SECONDS = 60;

    private ThinRod() {}

    static List<Query> queries(PublishedRow row) {
        double outer = row.number("D0");
        double mean = (outer + row.number("Df")) / 2;
        double minutes = row.want("t_min");
        return List.of(
                turned(row, outer).gives("chosen.speed.mPerMin", row, "V_m_min"),
                turned(row, mean)
                        .gives("force.N", row, "Fc_N")
                        .gives("power.W", row, "P_W")
                        .gives("torque.Nm", row, "T_Nm")
                        .gives("time.s", minutes * SECONDS, within(minutes * SECONDS * 2e-3))
                        .gives("power.W", row.want("mrr") * row.number("U_Ws_mm3") / SECONDS, row.within("P_W")));
    }

    private static Query turned(PublishedRow row, double diameter) {
        return CuttingRows.cut("turn", "304", diameter + " mm")
                .with("cuttingForce", row.number("U_Ws_mm3") * 1000 + " MPa")
                .with("thinning", 0)
                .with("depth", (row.number("D0") - row.number("Df")) / 2 + " mm")
                .with("length", row.number("L") - RUN_IN_MM + " mm")
                .with("speeds", row.text("rpm") + " rpm")
                .with("feeds", row.number("vf") / row.number("rpm") + " mm");
    }
}
