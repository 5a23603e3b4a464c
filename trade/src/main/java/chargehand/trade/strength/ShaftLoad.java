package chargehand.trade.strength;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Power;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.Torque;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/**
 * What acts on a shaft.
 *
 * @param torque the turning moment, not negative
 * @param bending the bending moment, zero where there is none
 */
public record ShaftLoad(Torque torque, Torque bending) {
    private static final Torque NONE = Torque.newtonMetres(0);
    private static final Source MECHANICS = Source.published("mechanics: power = torque × angular speed");
    private static final double SECONDS_IN_MINUTE = 60;

    public ShaftLoad {
        if (torque.newtonMetres() < 0 || bending.newtonMetres() < 0) {
            throw new IllegalArgumentException("torque and bending moment are given without a sign");
        }
    }

    /** Torque alone. */
    public static ShaftLoad of(Torque torque) {
        return new ShaftLoad(torque, NONE);
    }

    /** The same with a bending moment. */
    public ShaftLoad withBending(Torque moment) {
        return new ShaftLoad(torque, moment);
    }

    /** The torque that carries a power at a speed, which must be more than nothing. */
    public static Torque torque(Power power, SpindleSpeed speed, Working working) {
        double turning = 2 * Math.PI * speed.rpm() / SECONDS_IN_MINUTE;
        var torque = Torque.newtonMetres(power.watts() / turning);
        working.step(
                "Torque from power and speed",
                "T = P / (2 π n / 60)",
                Figures.four(power.watts()) + " W / (2 π × " + Figures.four(speed.rpm()) + " / 60)",
                Figures.four(torque.newtonMetres()) + " N·m",
                MECHANICS);
        return torque;
    }

    /** The torque of an effort at the end of a lever. */
    public static Torque torque(Force effort, Length lever, Working working) {
        double metres = lever.mm() / 1000;
        var torque = Torque.newtonMetres(effort.newtons() * metres);
        working.step(
                "Torque from effort and lever",
                "T = F × l",
                Figures.four(effort.newtons()) + " N × " + Figures.four(metres) + " m",
                Figures.four(torque.newtonMetres()) + " N·m",
                MECHANICS);
        return torque;
    }
}
