package chargehand.trade.strength;

import chargehand.measure.Figures;
import chargehand.measure.Pressure;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/**
 * What shear stress a shaft may carry: 0.30 of the yield or 0.18 of the tensile strength, whichever is less, and three
 * quarters of that where a keyway is cut.
 */
public final class AllowableShear {
    private static final Source CODE = Source.memory("ASME Code for Design of Transmission Shafting");
    private static final double OF_YIELD = 0.30;
    private static final double OF_TENSILE = 0.18;
    private static final double WITH_KEYWAY = 0.75;

    private AllowableShear() {}

    /** The allowable shear stress of a material at its least strength, before any keyway. */
    public static Pressure of(Material material, Working working) {
        double tensile = material.strength().tensile().megapascals();
        working.fact(
                material.name() + ": tensile strength at the least",
                Figures.four(tensile) + " MPa",
                material.strength().source());
        double byTensile = OF_TENSILE * tensile;
        if (material.strength().yield().isEmpty()) {
            working.step(
                    "Allowable shear stress; the material has no yield point to go by",
                    "τa = 0.18 Rm",
                    "0.18 × " + Figures.four(tensile),
                    Figures.four(byTensile) + " MPa",
                    CODE);
            working.caution(material.name() + " breaks without warning: keep shocks away from it.");
            return Pressure.megapascals(byTensile);
        }
        double yield = material.strength().yield().get().megapascals();
        double least = Math.min(OF_YIELD * yield, byTensile);
        working.fact(
                material.name() + ": yield strength at the least",
                Figures.four(yield) + " MPa",
                material.strength().source());
        working.step(
                "Allowable shear stress",
                "τa = the less of 0.30 Re and 0.18 Rm",
                "the less of 0.30 × " + Figures.four(yield) + " and 0.18 × " + Figures.four(tensile),
                Figures.four(least) + " MPa",
                CODE);
        return Pressure.megapascals(least);
    }

    /** The allowable stress that is left where a keyway is cut. */
    public static Pressure keyed(Pressure allowable, Working working) {
        double left = WITH_KEYWAY * allowable.megapascals();
        working.step(
                "A keyway raises the stress at its corners: three quarters is allowed",
                "τa = 0.75 τa",
                "0.75 × " + Figures.four(allowable.megapascals()),
                Figures.four(left) + " MPa",
                CODE);
        return Pressure.megapascals(left);
    }
}
