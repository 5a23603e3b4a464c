package chargehand.part;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.measure.Written;

/**
 * One size of a part: the nominal as written and how far from it the work may be.
 *
 * @param nominal the size as written
 * @param tolerance what the drawing allows
 */
public record Size(Written nominal, Tolerance tolerance) {
    /** A size under the general tolerance. */
    public static Size general(Written nominal) {
        return new Size(nominal, new Tolerance.General());
    }

    public Length length() {
        return nominal.length();
    }

    /**
     * The limits this size must lie between.
     *
     * @param general what holds where the size itself says nothing
     */
    public Limits limits(GeneralTolerance general) {
        return switch (tolerance) {
            case Tolerance.General() -> Limits.plusMinus(length(), general.deviation(length()));
            case Tolerance.Bracketed() -> Limits.plusMinus(length(), general.deviation(length()));
            case Tolerance.Deviations(Length lower, Length upper) -> Limits.of(length(), lower, upper);
            case Tolerance.Letters(var code, Length lower, Length upper) -> Limits.of(length(), lower, upper);
        };
    }

    /** Whether the drawing gives this size its own tolerance. */
    public boolean isToleranced() {
        return switch (tolerance) {
            case Tolerance.General() -> false;
            case Tolerance.Bracketed() -> false;
            case Tolerance.Deviations deviations -> true;
            case Tolerance.Letters letters -> true;
        };
    }
}
