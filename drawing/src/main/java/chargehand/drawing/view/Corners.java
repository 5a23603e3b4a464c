package chargehand.drawing.view;

import chargehand.part.shape.Station;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Tells the corners of a profile from the joints between the chords of an arc, which are no edges. A joint turns little and
 * stands beside another that turns little the same way; anything else that turns is an edge, a slight taper too.
 *
 * @param stations of the profile
 */
record Corners(List<Station> stations) {
    /** The most that two chords of an arc turn from each other (degrees). */
    private static final double CHORDS = 12;

    /** Less than this does not turn (degrees): rounding to whole nanometres. */
    private static final double STRAIGHT = 0.05;

    List<Station> edges() {
        return IntStream.range(0, stations.size())
                .filter(this::isEdge)
                .mapToObj(stations::get)
                .toList();
    }

    private boolean isEdge(int index) {
        double turn = turn(index);
        if (Math.abs(turn) < STRAIGHT) {
            return false;
        }
        return Math.abs(turn) > CHORDS || !(isChordLike(turn, index - 1) || isChordLike(turn, index + 1));
    }

    private boolean isChordLike(double turn, int neighbour) {
        double other = turn(neighbour);
        return Math.abs(other) >= STRAIGHT && Math.abs(other) <= CHORDS && turn * other > 0;
    }

    /** How far the profile turns at a station (degrees, positive inward); at an end, as if a face followed. */
    private double turn(int index) {
        if (index < 0 || index >= stations.size()) {
            return 0;
        }
        double before = index == 0 ? 90 : direction(index - 1);
        double after = index == stations.size() - 1 ? -90 : direction(index);
        return before - after;
    }

    private double direction(int from) {
        Station here = stations.get(from);
        Station there = stations.get(from + 1);
        double along = there.at().minus(here.at()).mm();
        double outward = there.radius().minus(here.radius()).mm();
        return Math.toDegrees(Math.atan2(outward, along));
    }
}
