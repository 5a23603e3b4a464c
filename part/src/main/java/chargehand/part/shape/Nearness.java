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
        return profile.segments().stream().allMatch(segment -> isNear(segment, 0, 1, nm));
    }

    /** Whether a piece is near from one share of its length to another. */
    private boolean isNear(Segment segment, double from, double to, double nm) {
        if (near.stream().anyMatch(other -> isNear(segment, from, other, nm) && isNear(segment, to, other, nm))) {
            return true;
        }
        if (!isNearAny(segment, from, nm) || !isNearAny(segment, to, nm)) {
            return false;
        }
        if (segment.lengthNm() * (to - from) <= FINEST_NM) {
            return true;
        }
        double middle = (from + to) / 2;
        return isNear(segment, from, middle, nm) && isNear(segment, middle, to, nm);
    }

    private boolean isNearAny(Segment segment, double share, double nm) {
        return near.stream().anyMatch(other -> isNear(segment, share, other, nm));
    }

    private static boolean isNear(Segment segment, double share, Segment other, double nm) {
        return other.distance(segment.zAt(share), segment.rAt(share)) <= nm;
    }
}
