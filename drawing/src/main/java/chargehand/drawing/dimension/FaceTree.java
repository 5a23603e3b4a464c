package chargehand.drawing.dimension;

import chargehand.measure.Length;
import java.util.HashMap;
import java.util.Map;

/**
 * Which faces already hang together by given lengths. A set of lengths defines a part when they join all its faces and none
 * of them could be worked out from the others: a tree (Dori, Communications of the ACM 35(10), 1992).
 */
final class FaceTree {
    private final Map<Length, Length> roots = new HashMap<>();
    private int joined;

    /**
     * Joins two faces by a length.
     *
     * @return whether it says something new; if not, the length follows from others and nothing is changed
     */
    boolean join(Length one, Length other) {
        Length a = root(one);
        Length b = root(other);
        if (a.equals(b)) {
            return false;
        }
        roots.put(a, b);
        joined++;
        return true;
    }

    private Length root(Length face) {
        Length above = roots.getOrDefault(face, face);
        return above.equals(face) ? face : root(above);
    }

    /** Whether so many faces all hang together. */
    boolean isWhole(int faces) {
        return joined == faces - 1;
    }
}
