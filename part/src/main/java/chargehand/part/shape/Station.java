package chargehand.part.shape;

import chargehand.measure.Length;

/**
 * A point of a profile.
 *
 * @param at along the axis, from end A
 * @param radius from the axis, zero or more
 */
public record Station(Length at, Length radius) {
    public Station {
        if (radius.isNegative()) {
            throw new IllegalArgumentException("a radius is zero or more, not " + radius);
        }
    }

    static Station nm(double at, double radius) {
        return new Station(new Length(Math.round(at)), new Length(Math.max(0, Math.round(radius))));
    }

    long z() {
        return at.nanometres();
    }

    long r() {
        return radius.nanometres();
    }

    Station withRadius(Length other) {
        return new Station(at, other);
    }
}
