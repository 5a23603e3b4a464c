package chargehand.trade.fit;

import chargehand.measure.Length;

/**
 * A fundamental deviation: the one that fixes where a tolerance zone lies.
 *
 * @param end which end of the zone it fixes
 * @param value how far that end lies from the nominal size
 */
record Deviation(End end, Length value) {
    enum End {
        LOWER,
        UPPER
    }

    static Deviation lower(Length value) {
        return new Deviation(End.LOWER, value);
    }

    static Deviation upper(Length value) {
        return new Deviation(End.UPPER, value);
    }

    /** The same for the other member of the pair: mirrored at the nominal size. */
    Deviation mirrored() {
        return switch (end) {
            case LOWER -> upper(value.negated());
            case UPPER -> lower(value.negated());
        };
    }
}
