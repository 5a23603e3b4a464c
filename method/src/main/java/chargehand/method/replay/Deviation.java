package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.List;

/** How far two profiles stray from each other: the greatest distance from any point of either to the other. */
final class Deviation {
    /** How near the work must come to the part, everywhere. */
    static final Length ALLOWED = Length.mm(0.001);

    /** Into how many pieces each straight piece of a profile is divided to be measured. */
    private static final int PIECES = 8;

    private Deviation() {}

    /** Whether two profiles come near enough to each other everywhere; judged all along, not at points. */
    static boolean isAllowed(Profile made, Profile wanted) {
        return made.equals(wanted) || made.isWithin(ALLOWED, wanted);
    }

    /**
     * The distance, to the nanometre above: exact where it is greatest at a station, as it is between straight pieces that
     * do not cross; elsewhere the greatest of many points. It is more than {@link #ALLOWED} just where
     * {@link #isAllowed} says no.
     */
    static Length between(Profile made, Profile wanted) {
        if (made.equals(wanted)) {
            return Length.ZERO;
        }
        Length measured = new Length((long) Math.ceil(Math.max(farthest(made, wanted), farthest(wanted, made))));
        return isAllowed(made, wanted)
                ? Length.least(measured, ALLOWED)
                : Length.most(measured, ALLOWED.plus(new Length(1)));
    }

    /** The farthest that a point of one profile lies from the other (nm). */
    private static double farthest(Profile from, Profile to) {
        double farthest = 0;
        for (int i = 1; i < from.stations().size(); i++) {
            Station one = from.stations().get(i - 1);
            Station other = from.stations().get(i);
            for (int piece = 0; piece <= PIECES; piece++) {
                double share = (double) piece / PIECES;
                farthest = Math.max(
                        farthest, distance(between(z(one), z(other), share), between(r(one), r(other), share), to));
            }
        }
        return farthest;
    }

    private static double between(double one, double other, double share) {
        return one + share * (other - one);
    }

    private static double z(Station station) {
        return station.at().nanometres();
    }

    private static double r(Station station) {
        return station.radius().nanometres();
    }

    private static double distance(double z, double r, Profile to) {
        List<Station> stations = to.stations();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < stations.size(); i++) {
            nearest = Math.min(nearest, distance(z, r, stations.get(i - 1), stations.get(i)));
        }
        return nearest;
    }

    /** How far a point lies from a straight piece. */
    private static double distance(double z, double r, Station one, Station other) {
        double dz = z(other) - z(one);
        double dr = r(other) - r(one);
        double square = dz * dz + dr * dr;
        double along = (z - z(one)) * dz + (r - r(one)) * dr;
        double share = square > 0 ? Math.clamp(along / square, 0.0, 1.0) : 0.0;
        return Math.hypot(z - z(one) - share * dz, r - r(one) - share * dr);
    }
}
