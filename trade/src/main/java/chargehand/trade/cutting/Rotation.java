package chargehand.trade.cutting;

import chargehand.measure.Length;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;

/** Surface speed and revolutions. */
public final class Rotation {
    private static final double MM_IN_METRE = 1000;

    private Rotation() {}

    /** The revolutions that give a surface speed at a diameter: n = 1000 v / (π d). */
    public static SpindleSpeed rpm(Speed speed, Length diameter) {
        return SpindleSpeed.rpm(MM_IN_METRE * speed.metresPerMinute() / (Math.PI * diameter.mm()));
    }

    /** The surface speed at a diameter: v = π d n / 1000. */
    public static Speed speed(SpindleSpeed rpm, Length diameter) {
        return Speed.metresPerMinute(Math.PI * diameter.mm() * rpm.rpm() / MM_IN_METRE);
    }

    /** How far a feed for each turn gets in a minute. */
    public static Speed feedRate(Length feed, SpindleSpeed rpm) {
        return Speed.metresPerMinute(feed.mm() * rpm.rpm() / MM_IN_METRE);
    }
}
