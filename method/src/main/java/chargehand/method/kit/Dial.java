package chargehand.method.kit;

import chargehand.measure.Length;

/**
 * The dial of a feed screw.
 *
 * @param graduation what one division says, more than zero
 * @param perTurn what one whole turn says, a whole number of divisions or within a division of it
 */
public record Dial(Length graduation, Length perTurn) {
    public Dial {
        if (!graduation.isPositive() || perTurn.isLessThan(graduation)) {
            throw new IllegalArgumentException("a dial has divisions of more than zero and a turn of at least one: "
                    + graduation + ", " + perTurn);
        }
    }

    /** The reading nearest to {@code reading} that stands on a division. */
    public Length nearest(Length reading) {
        return graduation.times(Math.rint(reading.over(graduation)));
    }

    /** The highest reading on a division that is not above {@code reading}. */
    public Length notAbove(Length reading) {
        return graduation.times(Math.floor(reading.over(graduation)));
    }
}
