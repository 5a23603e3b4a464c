package chargehand.book.method;

import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned.Reason;
import java.util.List;
import java.util.Optional;

/** What planning found. */
public sealed interface Finding extends PlannerReply {
    /**
     * A method, and how its replay ended.
     *
     * @param weighed how many alternatives were weighed to find it
     * @param bound how near it is to the quickest; empty where it was found before that was kept
     */
    record Found(Method method, ProofFigures proof, long weighed, Optional<Bound> bound) implements Finding {}

    /** None on this kit from this rack. */
    record NotHere(List<Reason> reasons) implements Finding {
        public NotHere {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("what cannot be made here has a reason");
            }
        }
    }
}
