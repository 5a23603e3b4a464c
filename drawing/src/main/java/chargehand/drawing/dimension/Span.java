package chargehand.drawing.dimension;

import chargehand.drawing.sign.Wording;

/**
 * A length as it lies along one side of a view.
 *
 * @param from where it begins on paper (mm along the side)
 * @param to where it ends, more than {@code from}
 * @param wording as it is printed
 */
record Span(double from, double to, Wording wording) {
    Span {
        if (!(from < to)) {
            throw new IllegalArgumentException("a length runs from less to more, not " + from + " to " + to);
        }
    }

    double length() {
        return to - from;
    }

    /** Whether the two share more than an end. */
    boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }
}
