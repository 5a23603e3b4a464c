package chargehand.method.search;

import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.wish.HolderName;
import chargehand.method.wish.Wish;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Finds the next best methods that are really different: with other stock, another machine or another holder, and not the
 * same set-ups in another order. From each method found, everything that it uses is left out in turn and the part planned
 * again; the quickest of what comes out is the next, and so on from there.
 */
final class Others {
    /** How many times the part is planned again at the most. */
    private static final int MOST_PLANNED = 24;

    private final Planner planner;
    private final Part part;
    private final int count;
    private final Set<String> seen = new HashSet<>();
    private final PriorityQueue<Other> waiting = new PriorityQueue<>(
            Comparator.comparingDouble(other -> other.ready().bound().counted().seconds()));
    private int planned;

    Others(Planner planner, Part part, int count) {
        this.planner = planner;
        this.part = part;
        this.count = count;
    }

    /** So many at the most, the quickest first, beside the best one within these wishes. */
    List<Other> list(Wishes wishes, int most) {
        var others = new ArrayList<Other>();
        if (!(planner.within(part, count, wishes) instanceof Planned.Ready best)) {
            return others;
        }
        seen.add(likeness(best.method()));
        vary(best, wishes);
        while (others.size() < most && !waiting.isEmpty()) {
            Other next = waiting.poll();
            others.add(next);
            vary(next.ready(), next.wishes());
        }
        return others;
    }

    private void vary(Planned.Ready ready, Wishes wishes) {
        for (Wish without : used(ready.method())) {
            Wishes narrower = wishes.and(without);
            if (planned < MOST_PLANNED) {
                planned++;
                if (planner.hastily(part, count, narrower) instanceof Planned.Ready other
                        && seen.add(likeness(other.method()))) {
                    waiting.add(new Other(narrower, other));
                }
            }
        }
    }

    /** Everything that a method uses, each as the wish to do without it. */
    private static Set<Wish> used(Method method) {
        var used = new LinkedHashSet<Wish>();
        used.add(new Wish.NotFromPiece(method.stock().piece()));
        for (SetUp setUp : method.setUps()) {
            used.add(new Wish.WithoutMachine(setUp.machine()));
            used.add(new Wish.WithoutHolder(setUp.machine(), HolderName.of(setUp.holding())));
        }
        if (isParted(method)) {
            used.add(new Wish.WithoutParting());
        }
        return used;
    }

    private static boolean isParted(Method method) {
        return method.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(operation -> operation.cut() instanceof Cut.PartOff);
    }

    /** What makes two methods the same kind: the stock, whether it is parted off, and what the work is held in. */
    private static String likeness(Method method) {
        List<String> held = method.setUps().stream()
                .map(setUp -> setUp.machine() + "/" + HolderName.of(setUp.holding()))
                .sorted()
                .toList();
        return method.stock().piece() + isParted(method) + held;
    }
}
