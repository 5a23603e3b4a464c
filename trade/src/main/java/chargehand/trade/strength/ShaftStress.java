package chargehand.trade.strength;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/**
 * What a torque, and a bending moment if there is one, do to a shaft.
 *
 * <p>Torsion alone gives τ = T / Wt. With bending the greatest shear stress is √((σ/2)² + τ²), which for a round shaft is
 * the familiar equivalent torque √(M² + T²). For squares and hexagons the two peaks do not stand at the same point, so that
 * the figure is on the safe side.
 *
 * @param shear the greatest shear stress
 * @param capacity the torque that would bring this stress to what is allowed, the bending moment staying as it is
 * @param twistPerMetre how far one end of a metre of it turns against the other
 */
public record ShaftStress(Pressure shear, Torque capacity, Angle twistPerMetre) {
    private static final double NMM_IN_NM = 1000;
    private static final double MM_IN_METRE = 1000;
    private static final Source TORSION = Source.published("strength of materials: torsion of round shafts, St Venant");
    private static final Source GUEST = Source.published("strength of materials: greatest shear stress (Guest)");

    /**
     * Works out the stress.
     *
     * @param load what acts on the shaft
     * @param allowable the shear stress allowed
     * @param stiffness the shear modulus of the material
     * @throws IllegalArgumentException when bending alone is more than is allowed
     */
    public static ShaftStress of(
            Section section, ShaftLoad load, Pressure allowable, Pressure stiffness, Working working) {
        double modulus = section.torsionModulusMm3();
        working.step(
                "Torsion modulus",
                section.torsionFormula(),
                section.torsionNumbers(),
                Figures.four(modulus) + " mm³",
                TORSION);
        double torque = load.torque().newtonMetres() * NMM_IN_NM;
        double torsion = torque / modulus;
        working.step(
                "Shear stress from the torque",
                "τ = T / Wt",
                Figures.four(torque) + " N·mm / " + Figures.four(modulus) + " mm³",
                Figures.four(torsion) + " MPa",
                TORSION);
        double bending = bendingStress(section, load, working);
        double greatest = combined(torsion, bending, working);
        return new ShaftStress(
                Pressure.megapascals(greatest),
                capacity(modulus, bending, allowable, working),
                twist(section, torque, stiffness, working));
    }

    /** The shear stress from the torque alone (MPa). */
    static double torsionAlone(Section section, ShaftLoad load) {
        return load.torque().newtonMetres() * NMM_IN_NM / section.torsionModulusMm3();
    }

    /** The greatest shear stress from the bending moment alone (MPa). */
    static double bendingAlone(Section section, ShaftLoad load) {
        return load.bending().newtonMetres() * NMM_IN_NM / section.bendingModulusMm3() / 2;
    }

    private static double bendingStress(Section section, ShaftLoad load, Working working) {
        double moment = load.bending().newtonMetres() * NMM_IN_NM;
        if (moment == 0) {
            return 0;
        }
        double modulus = section.bendingModulusMm3();
        double stress = moment / modulus;
        working.step(
                "Bending stress, about the weakest axis",
                "σ = M / Wb",
                Figures.four(moment) + " N·mm / " + Figures.four(modulus) + " mm³",
                Figures.four(stress) + " MPa",
                GUEST);
        return stress;
    }

    private static double combined(double torsion, double bending, Working working) {
        if (bending == 0) {
            return torsion;
        }
        double greatest = Math.hypot(bending / 2, torsion);
        working.step(
                "Greatest shear stress from both",
                "τmax = √((σ/2)² + τ²)",
                "√((" + Figures.four(bending) + "/2)² + " + Figures.four(torsion) + "²)",
                Figures.four(greatest) + " MPa",
                GUEST);
        return greatest;
    }

    private static Torque capacity(double modulus, double bending, Pressure allowable, Working working) {
        double allowed = allowable.megapascals();
        double left = allowed * allowed - bending * bending / 4;
        if (left <= 0) {
            throw new IllegalArgumentException("bending alone takes up all the stress allowed");
        }
        double torque = Math.sqrt(left) * modulus / NMM_IN_NM;
        working.step(
                "Torque that the shaft may carry",
                bending == 0 ? "Ta = τa Wt" : "Ta = √(τa² − (σ/2)²) Wt",
                bending == 0
                        ? Figures.four(allowed) + " × " + Figures.four(modulus)
                        : "√(" + Figures.four(allowed) + "² − (" + Figures.four(bending) + "/2)²) × "
                                + Figures.four(modulus),
                Figures.four(torque) + " N·m",
                TORSION);
        return Torque.newtonMetres(torque);
    }

    private static Angle twist(Section section, double torque, Pressure stiffness, Working working) {
        double constant = section.torsionConstantMm4();
        Angle twist = Angle.radians(torque * MM_IN_METRE / (stiffness.megapascals() * constant));
        working.step(
                "Twist in a metre of its length",
                "θ = T L / (G It)",
                Figures.four(torque) + " × 1000 / (" + Figures.four(stiffness.megapascals()) + " × "
                        + Figures.four(constant) + ") rad",
                Figures.four(twist.degrees()) + "°",
                TORSION);
        return twist;
    }
}
