package chargehand.part.shape;

import chargehand.measure.Length;
import java.util.Optional;

/**
 * A straight piece of a profile.
 *
 * @param from its end nearer A
 * @param to its end nearer B, not before {@code from}
 */
record Segment(Station from, Station to) {
    /** Whether this is the wall at a jump. */
    boolean isWall() {
        return from.z() == to.z();
    }

    boolean isOnAxis() {
        return from.r() == 0 && to.r() == 0;
    }

    /** The radius at a position on this piece, to the nearest nanometre. */
    Length radiusAt(Length at) {
        double share = (double) (at.nanometres() - from.z()) / (to.z() - from.z());
        return new Length(from.r() + Math.round(share * (to.r() - from.r())));
    }

    /** Where this piece has a radius that lies between those of its ends, to the nearest nanometre. */
    Length positionOf(Length radius) {
        double share = (double) (radius.nanometres() - from.r()) / (to.r() - from.r());
        return new Length(from.z() + Math.round(share * (to.z() - from.z())));
    }

    /** Where this piece crosses another over the same positions, if it does so between its ends. */
    Optional<Station> crossing(Segment other) {
        double before = (double) from.r() - other.from.r();
        double after = (double) to.r() - other.to.r();
        if (before * after >= 0) {
            return Optional.empty();
        }
        double share = before / (before - after);
        Length at = new Length(from.z() + Math.round(share * (to.z() - from.z())));
        return Optional.of(new Station(at, radiusAt(at)));
    }

    /** The volume of the frustum that turns inside this piece (nm³). */
    double turnedNm3() {
        double a = from.r();
        double b = to.r();
        return Math.PI / 3 * (to.z() - from.z()) * (a * a + a * b + b * b);
    }

    double lengthNm() {
        return Math.hypot((double) to.z() - from.z(), (double) to.r() - from.r());
    }

    /** The position (nm) at a share of the way along this piece, from 0 to 1. */
    double zAt(double share) {
        return from.z() + share * (to.z() - from.z());
    }

    /** The radius (nm) at a share of the way along this piece, from 0 to 1. */
    double rAt(double share) {
        return from.r() + share * (to.r() - from.r());
    }

    private double distance(Station point) {
        return distance((double) point.z(), (double) point.r());
    }

    /** How far a point lies from this piece (all nm). */
    double distance(double pointZ, double pointR) {
        double dz = (double) to.z() - from.z();
        double dr = (double) to.r() - from.r();
        double z = pointZ - from.z();
        double r = pointR - from.r();
        double square = dz * dz + dr * dr;
        double share = square > 0 ? Math.clamp((z * dz + r * dr) / square, 0.0, 1.0) : 0.0;
        return Math.hypot(z - share * dz, r - share * dr);
    }

    /** How far another piece lies from this one (nm), 0 where they cross. */
    double distance(Segment other) {
        if (crosses(other) && other.crosses(this)) {
            return 0;
        }
        double mine = Math.min(other.distance(from), other.distance(to));
        double others = Math.min(distance(other.from), distance(other.to));
        return Math.min(mine, others);
    }

    /** Whether the ends of another piece lie on different sides of the line through this one. */
    private boolean crosses(Segment other) {
        return side(other.from) * side(other.to) < 0;
    }

    private double side(Station point) {
        double area = ((double) to.z() - from.z()) * (point.r() - from.r())
                - ((double) to.r() - from.r()) * (point.z() - from.z());
        return Math.signum(area);
    }
}
