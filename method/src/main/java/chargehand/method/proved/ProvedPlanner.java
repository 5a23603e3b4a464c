package chargehand.method.proved;

import chargehand.method.kit.Kit;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.Rack;
import chargehand.method.replay.Fault;
import chargehand.method.replay.Proof;
import chargehand.method.replay.Replay;
import chargehand.method.search.Other;
import chargehand.method.search.Planner;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import java.util.List;

/** Plans a part in one shop and proves the method by replay before anyone sees it. */
public final class ProvedPlanner {
    private final Kit kit;
    private final Planner planner;

    public ProvedPlanner(Kit kit, Rack rack) {
        this.kit = kit;
        this.planner = new Planner(kit, rack);
    }

    /** How planning and proving ended. */
    public sealed interface Outcome {
        /**
         * A method whose replay makes the part.
         *
         * @param weighed how many alternatives were weighed to find it
         * @param bound how near it is to the quickest
         */
        record Proved(Method method, Proof proof, long weighed, Bound bound) implements Outcome {}

        /** There is none, or none that its replay makes. */
        record NotHere(List<Reason> reasons) implements Outcome {
            public NotHere {
                reasons = List.copyOf(reasons);
            }
        }
    }

    /** Plans so many of a part that is free of faults. */
    public Outcome plan(Part part, int count) {
        return plan(part, count, Wishes.NONE);
    }

    /** As {@link #plan(Part, int)}, within what somebody asks of the method. */
    public Outcome plan(Part part, int count, Wishes wishes) {
        return switch (planner.plan(part, count, wishes)) {
            case Planned.Ready ready -> proved(part, ready);
            case Planned.NotHere notHere -> new Outcome.NotHere(notHere.reasons());
        };
    }

    /**
     * The next best methods that are really different, as {@link Planner#others}, but for those whose replay does not make the
     * part.
     */
    public List<Other> others(Part part, int count, Wishes wishes, int most) {
        return planner.others(part, count, wishes, most).stream()
                .filter(other -> Replay.of(part, other.ready().method(), kit).made())
                .toList();
    }

    /** Why each set-up of the method within these wishes is not held otherwise. */
    public List<NotTaken> whyNot(Part part, int count, Wishes wishes) {
        return planner.whyNot(part, count, wishes);
    }

    /** What must be made before a method is carried out, in the order of its set-ups. */
    public List<Aid> aids(Method method) {
        return new Aids(this).of(method);
    }

    private Outcome proved(Part part, Planned.Ready ready) {
        Proof proof = Replay.of(part, ready.method(), kit);
        return proof.made()
                ? withAids(new Outcome.Proved(ready.method(), proof, ready.weighed(), ready.bound()))
                : new Outcome.NotHere(proof.faults().stream()
                        .map(ProvedPlanner::reason)
                        .distinct()
                        .toList());
    }

    /** The method, each set-up that wants a bush made first saying how; none where such a bush cannot be made here. */
    private Outcome withAids(Outcome.Proved proved) {
        List<Aid> aids = aids(proved.method());
        if (aids.isEmpty()) {
            return proved;
        }
        boolean all = aids.stream().allMatch(aid -> aid.made().isPresent());
        return all
                ? new Outcome.Proved(told(proved.method(), aids), proved.proof(), proved.weighed(), proved.bound())
                : new Outcome.NotHere(List.of(new Reason(
                        Code.NO_HOLDING,
                        "It would be held in a split bush, and nothing on the rack makes that bush.",
                        "A piece of steel or bronze large enough for the bush, or soft jaws.")));
    }

    private static Method told(Method method, List<Aid> aids) {
        List<SetUp> setUps = method.setUps().stream()
                .map(setUp -> aids.stream()
                        .filter(aid -> aid.setUp() == setUp.number())
                        .findFirst()
                        .map(aid -> setUp.withInstruction(aid.says()))
                        .orElse(setUp))
                .toList();
        return new Method(method.title(), method.issue(), method.count(), method.stock(), setUps, method.cautions());
    }

    private static Reason reason(Fault fault) {
        return new Reason(
                Code.NOT_PROVED,
                "A method was found, but carrying it out on paper does not make the part: set-up " + fault.setUp()
                        + ", operation " + fault.operation() + ": " + fault.say(),
                "Plan this one by hand, and tell whoever looks after the program.");
    }
}
