package chargehand.trade.bolt;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;

/**
 * A thread engaged over a short length, by the simple rule for the pull that strips it: half of a cylinder of the effective
 * diameter is metal.
 *
 * @param thread the thread
 * @param engaged length over which it holds
 * @param tensile strength of the weaker metal (MPa)
 */
record ShortThread(ScrewThread thread, Length engaged, double tensile) {
    /** Steel and bronze shear at about this share of their tensile strength (common practice). */
    private static final double SHEAR_SHARE = 0.6;

    private static final Source SIMPLE = new Source("simple estimate on the pitch cylinder, common practice");

    double areaMm2() {
        return Math.PI * thread.effective().mm() * engaged.mm() / 2;
    }

    /** The pull that strips it. */
    Force load() {
        return Force.newtons(SHEAR_SHARE * tensile * areaMm2());
    }

    void write(Working working) {
        working.step(
                "Thread in shear: half of a cylinder of its effective diameter is metal",
                "A = π d2 Le / 2",
                "π × " + LengthText.mm(thread.effective(), LengthText.MICROMETRE) + " × "
                        + LengthText.mm(engaged, LengthText.MICROMETRE) + " / 2",
                Figures.four(areaMm2()) + " mm²",
                SIMPLE);
        working.step(
                "Pull that strips it, the weaker metal sheared at six tenths of its tensile strength",
                "F = 0.6 Rm A",
                Figures.four(SHEAR_SHARE) + " × " + Figures.four(tensile) + " × " + Figures.four(areaMm2()),
                Figures.four(load().newtons()) + " N",
                SIMPLE);
    }
}
