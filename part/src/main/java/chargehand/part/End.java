package chargehand.part;

import chargehand.measure.Length;

/** One of the two ends of a turned part; sections are listed from A to B. */
public enum End {
    A,
    B;

    public End other() {
        return this == A ? B : A;
    }

    /** The position so far from {@code position} towards this end. */
    public Length from(Length position, Length distance) {
        return this == A ? position.minus(distance) : position.plus(distance);
    }

    /** How far {@code position} lies from {@code start} towards this end; negative when it lies the other way. */
    public Length distance(Length start, Length position) {
        return this == A ? start.minus(position) : position.minus(start);
    }
}
