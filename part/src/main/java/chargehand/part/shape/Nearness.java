package chargehand.part.shape;

import chargehand.measure.Length;
import java.util.List;

/**
 * Judges whether all of a profile lies near another one. A straight piece whose two ends are near one and the same piece
 * of the other profile is near it all along, since what is near a straight piece bulges nowhere inward; any other piece
 * is halved until that holds or an end is too far, down to {@link #FINEST_NM}, where both ends near settle it.
 */
final class Nearness {
    private static final double FINEST_NM = 20;

    private final List<Segment> near;

    Nearness(Profile to) {
        this.near = to.segments();
    }

    boolean holds(Profile profile, Length tolerance) {
        double nm = tolerance.nanometres();
        return profile.segments().stream().allMatch(segment -> isNear(segment, nm));
    }

    private boolean isNear(Segment segment, double nm) {
        if (near.stream().anyMatch(other -> isNear(segment.from(), other, nm) && isNear(segment.to(), other, nm))) {
            return true;
        }
        if (!isNearAny(segment.from(), nm) || !isNearAny(segment.to(), nm)) {
            return false;
        }
        if (segment.lengthNm() <= FINEST_NM) {
            return true;
        }
        Station middle = segment.middle();
        return isNear(new Segment(segment.from(), middle), nm) && isNear(new Segment(middle, segment.to()), nm);
    }

    private boolean isNearAny(Station point, double nm) {
        return near.stream().anyMatch(other -> isNear(point, other, nm));
    }

    private static boolean isNear(Station point, Segment segment, double nm) {
        return segment.distance(point) <= nm;
    }
}
