package chargehand.method.plan;

import java.util.List;

/** How planning ended. */
public sealed interface Planned {
    /**
     * A method was found; it is not yet replayed.
     *
     * @param method the best one found
     * @param weighed how many alternatives were weighed to find it
     * @param bound how near it is to the quickest
     */
    record Ready(Method method, long weighed, Bound bound) implements Planned {}

    /** No method exists on this kit from this rack. */
    record NotHere(List<Reason> reasons) implements Planned {
        public NotHere {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("what cannot be made here has a reason");
            }
        }
    }

    /**
     * Why something cannot be done here.
     *
     * @param code the kind of reason
     * @param say which requirement could not be met, a plain sentence
     * @param unlock what would make it possible
     */
    record Reason(Code code, String say, String unlock) {}

    /** The kinds of reasons. */
    enum Code {
        NO_STOCK,
        /** There would be a method, but for what somebody asked of it. */
        AS_ASKED,
        TOO_BIG,
        NO_MACHINE,
        NO_HOLDING,
        NO_TOOL,
        NO_THREAD_WAY,
        NO_DIVISION,
        RUN_OUT,
        TOO_SLENDER,
        WALL_TOO_THIN,
        TOLERANCE_TOO_FINE,
        /** The part has something that no method here makes yet. */
        NOT_PLANNED,
        /** A method was found and its replay did not make the part. */
        NOT_PROVED
    }
}
