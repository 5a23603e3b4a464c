package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Pressure;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/**
 * How far plain round work bends away from a turning tool, held in a chuck alone or with a centre at its other end. The chuck
 * is taken as stiff, so that real work bends rather more.
 *
 * @param diameter of the work
 * @param standsOut from the jaws to the tool at the free end, or to the centre
 * @param centre whether its other end runs on a centre; it is then weakest half way along
 */
record WorkBending(Length diameter, Length standsOut, boolean centre) {
    /** Share of the force along the cut that pushes work and tool apart (common practice). */
    private static final double APART = 0.5;

    /** Work held at one end and loaded at the other; held at one end, borne at the other, loaded in the middle. */
    private static final double FREE = 1.0 / 3;

    private static final double ON_CENTRE = 7.0 / 768;

    private static final Source BEAMS = Source.published("strength of materials: bending of beams");

    /** The distance that the tool's force pushes the work away. */
    Length by(Force along, Pressure modulus, Working working) {
        double apart = APART * along.newtons();
        double d = diameter.mm();
        double inertia = Math.PI * Math.pow(d, 4) / 64;
        double share = centre ? ON_CENTRE : FREE;
        double bends = share * apart * Math.pow(standsOut.mm(), 3) / (modulus.megapascals() * inertia);
        working.step(
                "Force that pushes work and tool apart, about half of that along the cut",
                "F = 0.5 Fc",
                "0.5 × " + Figures.four(along.newtons()),
                Figures.four(apart) + " N",
                Source.COMMON_PRACTICE);
        working.step(
                centre ? "How far it bends half way to the centre" : "How far its free end bends",
                centre ? "y = 7 F L³ / (768 E I),  I = π d⁴ / 64" : "y = F L³ / (3 E I),  I = π d⁴ / 64",
                Figures.four(apart) + " × " + LengthText.mmFigures(standsOut, LengthText.MICROMETRE) + "³, E = "
                        + Figures.four(modulus.megapascals()) + " MPa, d = "
                        + LengthText.mmFigures(diameter, LengthText.MICROMETRE),
                Figures.four(bends) + " mm",
                BEAMS);
        return Length.mm(Math.min(bends, standsOut.mm()));
    }
}
