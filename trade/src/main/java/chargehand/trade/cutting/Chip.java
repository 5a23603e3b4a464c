package chargehand.trade.cutting;

import chargehand.measure.Angle;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Power;
import chargehand.measure.Speed;
import chargehand.trade.material.Kienzle;

/**
 * The chip before it is cut: how thick it is across the edge and how wide along it.
 *
 * @param thickness h
 * @param width b
 */
public record Chip(Length thickness, Length width) {
    private static final double NEWTON_METRES_PER_MINUTE_IN_WATT = 60;

    /** The chip of a turning tool whose edge stands at an angle to the feed: 90° for a knife tool. */
    public static Chip turned(Length feed, Length depth, Angle edge) {
        return new Chip(feed.times(edge.sin()), depth.times(1 / edge.sin()));
    }

    /** The force along the cut, Fc = kc · b · h with kc at this thickness. */
    public Force force(Kienzle law) {
        return Force.newtons(law.specificForce(thickness).megapascals() * width.mm() * thickness.mm());
    }

    /** The power at the edge of a force at a surface speed. */
    public static Power power(Force force, Speed speed) {
        return Power.watts(force.newtons() * speed.metresPerMinute() / NEWTON_METRES_PER_MINUTE_IN_WATT);
    }
}
