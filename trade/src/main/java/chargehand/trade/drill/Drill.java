package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.Optional;

/**
 * A twist drill.
 *
 * @param series how its size is named
 * @param designation the name: {@code 10.2 mm}, {@code #7}, {@code letter F}, {@code 13/64 in}
 * @param diameter its nominal diameter
 */
public record Drill(DrillSeries series, String designation, Length diameter) {

    /**
     * Reads a drill: {@code #7}, {@code No. 7}, {@code letter F}, {@code F}, {@code 5.1}, {@code 5.1 mm}, {@code 13/64}.
     *
     * @param bareUnit the unit of a bare number with no fraction
     * @throws Unreadable with a sentence saying what would do
     */
    public static Drill parse(String written, LengthUnit bareUnit) {
        return DrillReader.read(written, bareUnit);
    }

    /**
     * The drill that a number with its sign or a letter names; empty for anything else, such as a plain size.
     *
     * @throws Unreadable when there is no drill of that number
     */
    public static Optional<Drill> findNamed(String written) {
        return DrillReader.findNamed(written);
    }

    /** As {@link #parse(String, LengthUnit)}, a bare number being millimetres. */
    public static Drill parse(String written) {
        return parse(written, LengthUnit.MILLIMETRE);
    }

    @Override
    public String toString() {
        return designation;
    }
}
