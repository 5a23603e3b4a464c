package chargehand.trade.fit;

import chargehand.measure.Length;

/**
 * A hole and a shaft of the same nominal size put together.
 *
 * @param hole where the hole may lie
 * @param shaft where the shaft may lie
 */
public record Fit(ToleranceZone hole, ToleranceZone shaft) {
    /** What a pair within its limits does. */
    public enum Kind {
        /** There is always room, or at the tightest none and no squeeze. */
        CLEARANCE,
        /** Some pairs have room, others must be pressed. */
        TRANSITION,
        /** The shaft is always the larger, or at the slackest the same. */
        INTERFERENCE
    }

    public Fit {
        if (!hole.nominal().equals(shaft.nominal())) {
            throw new IllegalArgumentException("a fit needs one nominal size for hole and shaft");
        }
    }

    /** The most room: largest hole less smallest shaft. Negative for interference. */
    public Length clearanceMax() {
        return hole.upper().minus(shaft.lower());
    }

    /** The least room: smallest hole less largest shaft. Negative for interference. */
    public Length clearanceMin() {
        return hole.lower().minus(shaft.upper());
    }

    public Kind kind() {
        if (!clearanceMin().isNegative()) {
            return Kind.CLEARANCE;
        }
        return clearanceMax().isPositive() ? Kind.TRANSITION : Kind.INTERFERENCE;
    }
}
