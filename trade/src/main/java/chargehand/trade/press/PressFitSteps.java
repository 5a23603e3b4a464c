package chargehand.trade.press;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Pressure;
import chargehand.measure.Temperature;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** Writes down how the grip of a press fit is found. */
final class PressFitSteps {
    private static final Source LAME = Source.published("strength of materials: Lamé's thick cylinders");
    private static final Temperature SHOP = Temperature.celsius(20);

    /** Room that a heated hub needs to drop over its shaft: a thousandth of the diameter. */
    private static final double ROOM = 0.001;

    private static final double TEMPER_CELSIUS = 250;
    private static final double MOST_CELSIUS = 5_000;

    private final PressFit fit;
    private final Asked asked;
    private final Working working;

    PressFitSteps(PressFit fit, Asked asked, Working working) {
        this.fit = fit;
        this.asked = asked;
        this.working = working;
    }

    Pressure pressure() {
        Pressure pressure = fit.pressure();
        working.step(
                "Pressure between hub and shaft",
                "p = δ / [d (ch + νh)/Eh + d (cs − νs)/Es],  c = (outer² + inner²)/(outer² − inner²)",
                said(fit.interference()) + " / [" + said(fit.diameter()) + " × (" + Figures.four(fit.hubFactor())
                        + " + "
                        + Figures.four(fit.hub().poissonRatio()) + ")/"
                        + Figures.four(fit.hub().elasticModulus().megapascals()) + " + " + said(fit.diameter()) + " × ("
                        + Figures.four(fit.shaftFactor()) + " − "
                        + Figures.four(fit.shaft().poissonRatio()) + ")/"
                        + Figures.four(fit.shaft().elasticModulus().megapascals()) + "]",
                Figures.four(pressure.megapascals()) + " MPa",
                LAME);
        return pressure;
    }

    Force force(Length length, double friction) {
        double area = Math.PI * fit.diameter().mm() * length.mm();
        var force = Force.newtons(friction * fit.pressure().megapascals() * area);
        working.step(
                "Force to press it the last of the way in, or out",
                "F = μ p π d L",
                Figures.four(friction) + " × " + Figures.four(fit.pressure().megapascals()) + " × π × "
                        + said(fit.diameter()) + " × " + said(length),
                Figures.four(force.newtons()) + " N",
                LAME);
        return force;
    }

    Torque torque(Force force) {
        var torque = Torque.newtonMetres(force.newtons() * fit.diameter().mm() / 2 / 1000);
        working.step(
                "Torque that the grip holds",
                "T = F d / 2",
                Figures.four(force.newtons()) + " × " + said(fit.diameter()) + " / 2",
                Figures.four(torque.newtonMetres()) + " N·m",
                LAME);
        return torque;
    }

    void stresses() {
        working.step(
                "Hoop stress at the bore of the hub",
                "σ = p ch",
                Figures.four(fit.pressure().megapascals()) + " × " + Figures.four(fit.hubFactor()),
                Figures.four(fit.hubStress().megapascals()) + " MPa",
                LAME);
    }

    /** The strength of the hub over its stress: hoop tension and the pressure act together, as their difference. */
    double hubFactor(Material hub) {
        double strength =
                hub.strength().yield().orElse(hub.strength().tensile()).megapascals();
        double stress = fit.hubStress().megapascals() + fit.pressure().megapascals();
        double factor = strength / stress;
        working.step(
                "Strength of the hub over hoop tension and pressure together",
                "Re / (σ + p)",
                Figures.four(strength) + " / (" + Figures.four(fit.hubStress().megapascals()) + " + "
                        + Figures.four(fit.pressure().megapascals()) + ")",
                Figures.four(factor),
                hub.strength().source());
        if (factor < 1) {
            working.caution("The hub would stretch for good or crack: less interference, or a thicker hub.");
        }
        working.caution(
                "Pressing stores force that lets go at once: guard the press, stand out of its line, and let the"
                        + " competent person decide where a failure could hurt someone.");
        return factor;
    }

    Temperature heat(Material hub) {
        Length room = fit.diameter().times(ROOM);
        double rate = hub.physical().expansionPerKelvin();
        double rise = fit.interference().plus(room).over(fit.diameter()) / rate;
        var heat = Temperature.celsius(Math.min(MOST_CELSIUS, SHOP.celsius() + rise));
        working.step(
                "Heat the hub from 20 °C until it drops over with a thousandth of the diameter to spare",
                "t = 20 + (δ + 0.001 d) / (α d)",
                "20 + (" + said(fit.interference()) + " + " + said(room) + ") / (" + Figures.four(rate * 1e6)
                        + "/1000000 × " + said(fit.diameter()) + ")",
                Figures.four(heat.celsius()) + " °C",
                Source.COMMON_PRACTICE);
        if (heat.celsius() > TEMPER_CELSIUS) {
            working.caution("This is hot enough to soften hardened parts: cool the shaft as well, or press it.");
        }
        working.caution("Heat evenly, measure the temperature, and have gloves and a plan: it seizes in seconds.");
        return heat;
    }

    private String said(Length length) {
        return LengthText.in(length, asked.unit());
    }
}
