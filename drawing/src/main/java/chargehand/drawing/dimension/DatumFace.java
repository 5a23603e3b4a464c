package chargehand.drawing.dimension;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Section;
import java.util.stream.IntStream;

/**
 * Finds the face from which lengths are best given: a shoulder that something toleranced bears against, failing that a
 * shoulder with much beside it, failing that an end.
 */
record DatumFace(Body.Turned body) {
    private static final int SEAT = 50;
    private static final int TOLERANCED = 10;
    private static final int FLANGE = 8;
    private static final int END = 5;

    /** Its position; the first of those that score alike. */
    Length at() {
        int faces = body.outside().size() + 1;
        int best = IntStream.range(0, faces)
                .reduce((one, other) -> score(other) > score(one) ? other : one)
                .orElseThrow();
        return body.start(best);
    }

    private int score(int face) {
        int score = face == 0 || face == body.outside().size() ? END : 0;
        if (face > 0 && isToleranced(face - 1)) {
            score += TOLERANCED + (isShoulder(face, face - 1) ? SEAT : 0);
        }
        if (face < body.outside().size() && isToleranced(face)) {
            score += TOLERANCED + (isShoulder(face, face) ? SEAT : 0);
        }
        boolean inner = face > 0 && face < body.outside().size();
        return inner && before(face).isMoreThan(after(face)) != before(face).isLessThan(after(face))
                ? score + FLANGE * largest(face)
                : score;
    }

    /** 1 where the largest diameter of the part stands at this face. */
    private int largest(int face) {
        Length most = body.largestDiameter();
        return before(face).equals(most) || after(face).equals(most) ? 1 : 0;
    }

    private Length before(int face) {
        return body.outside().get(face - 1).diameterTowardsB();
    }

    private Length after(int face) {
        return body.outside().get(face).diameterTowardsA();
    }

    /** Whether a section ends at this face against something larger. */
    private boolean isShoulder(int face, int section) {
        if (face == 0 || face == body.outside().size()) {
            return false;
        }
        return section == face
                ? before(face).isMoreThan(after(face))
                : after(face).isMoreThan(before(face));
    }

    private boolean isToleranced(int section) {
        return switch (body.outside().get(section)) {
            case Section.Round round -> round.diameter().isToleranced();
            case Section.Groove groove -> false;
            case Section.Threaded threaded -> false;
            case Section.Polygon polygon -> false;
            case Section.Toothed toothed -> toothed.outside().isToleranced();
            case Section.Knurled knurled -> false;
            case Section.Curved curved -> false;
            case Section.Cone cone ->
                cone.towardsA().isToleranced() || cone.towardsB().isToleranced();
        };
    }
}
