package chargehand.book.method;

import chargehand.book.Objection;
import java.util.List;

/** What a planner answers. */
public sealed interface PlannerReply permits Finding, PlannerReply.KitFaulty {
    /** The shop's kit or rack cannot be read as it is written; an objection's field is the file and the place in it. */
    record KitFaulty(List<Objection> objections) implements PlannerReply {
        public KitFaulty {
            objections = List.copyOf(objections);
        }
    }
}
