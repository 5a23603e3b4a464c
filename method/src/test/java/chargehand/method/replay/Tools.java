package chargehand.method.replay;

import chargehand.method.plan.Cut;

/** Kinds of cut by the tools they take. */
final class Tools {
    private Tools() {}

    /** Whether a cut calls for a certain tool at all. */
    static boolean isTold(Cut cut) {
        return !(cut instanceof Cut.Deburr || cut instanceof Cut.SawOff);
    }

    /** Whether two cuts are of different kinds; edges are left out, since many tools cut them. */
    static boolean isOtherKind(Cut cut, Cut other) {
        return isTold(other)
                && !(cut instanceof Cut.FinishEdge || other instanceof Cut.FinishEdge)
                && !cut.getClass().equals(other.getClass());
    }
}
