package chargehand.method.search;

import chargehand.method.plan.Planned;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.wish.Wish;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/** Finds which of the things somebody asked of a method leave no method: each is left out in turn, and then all of them. */
final class InTheWay {
    private final Planner planner;
    private final Part part;
    private final int count;

    InTheWay(Planner planner, Part part, int count) {
        this.planner = planner;
        this.part = part;
        this.count = count;
    }

    /** The reasons, those that name a wish first; those found already where no wish is to blame. */
    Planned.NotHere among(Wishes wishes, Planned.NotHere found) {
        List<Reason> reasons = new ArrayList<>();
        for (Wish wish : wishes.list()) {
            if (isReady(wishes.less(wish))) {
                reasons.add(reason("'" + wish.says() + "'", "Leave that out"));
            }
        }
        if (reasons.isEmpty() && wishes.list().size() > 1 && isReady(Wishes.NONE)) {
            reasons.add(reason(
                    "what was asked of it, taken together (" + said(wishes) + "),", "Leave more than one of them out"));
        }
        return reasons.isEmpty() ? found : new Planned.NotHere(reasons);
    }

    private boolean isReady(Wishes fewer) {
        return planner.within(part, count, fewer) instanceof Planned.Ready;
    }

    private static String said(Wishes wishes) {
        return String.join("; ", wishes.list().stream().map(Wish::says).toList());
    }

    private static Reason reason(String what, String unlock) {
        return new Reason(
                Code.AS_ASKED,
                "There is no method left: " + what + " makes it impossible here.",
                unlock + ": without it there is a method on this kit, from this rack.");
    }
}
