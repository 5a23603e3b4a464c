package chargehand.drawing.dimension;

import chargehand.measure.Length;

/**
 * Two faces between which a length may be given.
 *
 * @param from the one nearer end A
 * @param to the one nearer end B
 */
record FacePair(Length from, Length to) {
    static FacePair of(Length one, Length other) {
        return new FacePair(Length.least(one, other), Length.most(one, other));
    }

    Length length() {
        return to.minus(from);
    }
}
