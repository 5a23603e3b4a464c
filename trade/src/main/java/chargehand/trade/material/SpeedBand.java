package chargehand.trade.material;

import chargehand.measure.Speed;
import chargehand.trade.sum.Source;

/**
 * Surface speeds for turning with one kind of tool: starting values, from heavy cuts to light ones.
 *
 * @param low for roughing
 * @param high for finishing, not less than {@code low}
 * @param source where both come from
 */
public record SpeedBand(Speed low, Speed high, Source source) {
    public SpeedBand {
        if (high.compareTo(low) < 0) {
            throw new IllegalArgumentException("finishing speed lies below roughing speed");
        }
    }

    /** The speed half-way between roughing and finishing. */
    public Speed middle() {
        return Speed.metresPerMinute((low.metresPerMinute() + high.metresPerMinute()) / 2);
    }
}
