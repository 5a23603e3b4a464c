package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Speeds;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Working;
import java.util.Locale;

/** Picks a spindle speed from the machine's own list: the fastest that does not pass the surface speed wanted. */
final class Spindle {
    private Spindle() {}

    static SpindleSpeed pick(Speeds speeds, Length diameter, CutKind kind, Material material, Working working) {
        Speed wanted = kind.speed(material);
        double rpm = wanted.metresPerMinute() * 1000 / (Math.PI * diameter.mm());
        SpindleSpeed picked = speeds.notAbove(SpindleSpeed.rpm(rpm)).orElse(speeds.slowest());
        working.step(
                "Spindle speed for " + material.grade() + ", " + share(kind),
                "n = v / (π d)",
                String.format(Locale.ROOT, "%.1f m/min / (π × %.2f mm)", wanted.metresPerMinute(), diameter.mm()),
                String.format(Locale.ROOT, "%.0f rpm; the machine has %.0f", rpm, picked.rpm()),
                CutKind.SOURCE);
        if (picked.rpm() > rpm) {
            working.caution("Even the slowest speed is faster than wanted here: take light cuts and mind the edge.");
        }
        return picked;
    }

    private static String share(CutKind kind) {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return String.format(Locale.ROOT, "%s at %.0f %% of turning speed", name, kind.share() * 100);
    }
}
