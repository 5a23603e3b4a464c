package chargehand.book.method;

import chargehand.book.Objection;
import java.util.List;

/** What a planner answers. */
public sealed interface PlannerReply permits Finding, PlannerReply.KitFaulty, PlannerReply.WishesFaulty {
    /** The shop's kit or rack cannot be read as it is written; an objection's field is the file and the place in it. */
    record KitFaulty(List<Objection> objections) implements PlannerReply {
        public KitFaulty {
            objections = List.copyOf(objections);
        }
    }

    /** What is asked of the method cannot be understood, or names what the shop or the part does not have. */
    record WishesFaulty(List<Objection> objections) implements PlannerReply {
        public WishesFaulty {
            objections = List.copyOf(objections);
        }
    }
}
