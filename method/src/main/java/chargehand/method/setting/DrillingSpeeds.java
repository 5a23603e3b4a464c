package chargehand.method.setting;

import chargehand.method.kit.Bench;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Speeds;

/** The spindle speeds of whichever machine drills. */
final class DrillingSpeeds {
    private DrillingSpeeds() {}

    static Speeds of(Machine machine) {
        return switch (machine) {
            case RadialDrill drill -> drill.speeds();
            case Mill mill -> mill.speeds();
            case Lathe lathe -> lathe.speeds();
            case Saw saw -> throw new IllegalArgumentException("a saw does not drill");
            case Bench bench -> throw new IllegalArgumentException("a bench does not drill");
        };
    }
}
