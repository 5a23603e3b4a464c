package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import java.util.Optional;

/**
 * A set of collets in even steps. A collet takes bright or turned round work of its own size and a little under.
 *
 * @param name what the shop calls the set
 * @param sizes the smallest and the largest collet
 * @param step from one collet to the next, more than zero
 * @param closes how far below its size a collet still grips soundly, not below zero
 * @param gripLength how far it bears along the work
 * @param runOut the total indicator reading as measured
 */
public record ColletSet(String name, Limits sizes, Length step, Length closes, Length gripLength, Length runOut) {
    public ColletSet {
        if (!step.isPositive() || closes.isNegative() || !gripLength.isPositive() || runOut.isNegative()) {
            throw new IllegalArgumentException("collets go up in steps, grip a length, and run-out is not below zero");
        }
    }

    /** The smallest collet that takes this diameter; empty where none closes on it. */
    public Optional<Length> colletFor(Length diameter) {
        double steps = Math.ceil(diameter.minus(sizes.least()).over(step));
        Length collet = sizes.least().plus(step.times(Math.max(0, steps)));
        boolean grips =
                !collet.isMoreThan(sizes.most()) && !collet.minus(diameter).isMoreThan(closes);
        return grips ? Optional.of(collet) : Optional.empty();
    }
}
