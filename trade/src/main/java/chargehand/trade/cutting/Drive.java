package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Power;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.trade.material.Kienzle;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** From a force at the edge to what the machine must give. */
final class Drive {
    /** Share of the motor's power that reaches the edge on an elderly machine with belts and gears. */
    static final double EFFICIENCY = 0.75;

    private static final double MM_IN_METRE = 1000;

    private Drive() {}

    /** Writes down the specific force at a chip thickness. */
    static Pressure specificForce(Kienzle law, Length thickness, Working working) {
        Pressure force = law.specificForce(thickness);
        working.step(
                "Cutting force on each square millimetre of chip (Kienzle)",
                "kc = kc1.1 × h^(−mc)",
                Figures.four(law.kc11().megapascals()) + " × " + LengthText.mmFigures(thickness, LengthText.MICROMETRE)
                        + "^(−" + Figures.four(law.mc()) + ")",
                Figures.four(force.megapascals()) + " N/mm²",
                law.source());
        return force;
    }

    /** Torque and power of a force along the cut at the diameter it acts on. */
    static CutSettings.Load load(Force force, Length diameter, CutSettings.Spindle spindle, Working working) {
        Power power = Chip.power(force, spindle.speed());
        working.step(
                "Power at the edge",
                "P = Fc × v / 60",
                Figures.four(force.newtons()) + " N × "
                        + Figures.four(spindle.speed().metresPerMinute()) + " m/min / 60",
                Figures.four(power.watts()) + " W",
                Source.GEOMETRY);
        return new CutSettings.Load(
                force, Torque.newtonMetres(force.newtons() * diameter.mm() / 2 / MM_IN_METRE), power);
    }

    /** The power that the motor has left for the edge. */
    static Power atEdge(Power motor) {
        return Power.watts(motor.watts() * EFFICIENCY);
    }
}
