package chargehand.trade.thread;

import chargehand.measure.Length;
import java.util.Optional;

/**
 * The most and the least that a diameter of a thread may be; standards leave one side open where the form itself sets it.
 *
 * @param most the upper limit, included, if there is one
 * @param least the lower limit, included, if there is one
 */
public record SizeLimits(Optional<Length> most, Optional<Length> least) {
    static SizeLimits between(Length least, Length most) {
        return new SizeLimits(Optional.of(most), Optional.of(least));
    }

    /** From {@code most} down by a tolerance, as outside diameters are limited. */
    static SizeLimits below(Length most, Length tolerance) {
        return between(most.minus(tolerance), most);
    }

    /** From {@code least} up by a tolerance, as inside diameters are limited. */
    static SizeLimits above(Length least, Length tolerance) {
        return between(least, least.plus(tolerance));
    }

    static SizeLimits atMost(Length most) {
        return new SizeLimits(Optional.of(most), Optional.empty());
    }

    static SizeLimits atLeast(Length least) {
        return new SizeLimits(Optional.empty(), Optional.of(least));
    }

    public boolean contain(Length size) {
        return most.map(limit -> !size.isMoreThan(limit)).orElse(true)
                && least.map(limit -> !size.isLessThan(limit)).orElse(true);
    }

    /** Both limits to the nearest whole number of steps, halves up. */
    SizeLimits rounded(Length step) {
        return new SizeLimits(most.map(limit -> rounded(limit, step)), least.map(limit -> rounded(limit, step)));
    }

    static Length rounded(Length length, Length step) {
        long steps = Math.floorDiv(2 * length.nanometres() + step.nanometres(), 2 * step.nanometres());
        return new Length(steps * step.nanometres());
    }
}
