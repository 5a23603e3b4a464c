package chargehand.method.search;

import chargehand.method.aim.Aim;
import chargehand.method.kit.Kit;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.rack.Rack;
import chargehand.method.stock.Candidates;
import chargehand.method.stock.CuttingUp;
import chargehand.method.stock.StockChooser;
import chargehand.method.wish.Names;
import chargehand.method.wish.Wishes;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.List;
import java.util.Optional;

/**
 * Plans how a part is made in one shop: every piece of stock it will come out of, every way this kit can hold it, the trade's
 * order, and of all that the method with the least total time. A pure function of what it is given.
 */
public final class Planner {
    private final Kit kit;
    private final Rack rack;

    public Planner(Kit kit, Rack rack) {
        this.kit = kit;
        this.rack = rack;
    }

    /**
     * Plans so many of a part.
     *
     * @param part checked and free of faults
     * @param count how many, at least one
     * @return the method, not yet replayed, or the reasons why there is none
     */
    public Planned plan(Part part, int count) {
        return plan(part, count, Wishes.NONE);
    }

    /**
     * As {@link #plan(Part, int)}, within what somebody asks of the method. Where that leaves nothing, the reasons say which
     * of the wishes stands in the way.
     */
    public Planned plan(Part part, int count, Wishes wishes) {
        Planned planned = within(part, count, wishes);
        return planned instanceof Planned.NotHere notHere && !wishes.isEmpty()
                ? new InTheWay(this, part, count).among(wishes, notHere)
                : planned;
    }

    /**
     * The next best methods that are really different, the quickest first: with other stock, another machine or another
     * holder.
     *
     * @param wishes what is asked of them all
     * @param most how many at the most
     */
    public List<Other> others(Part part, int count, Wishes wishes, int most) {
        return new Others(this, part, count).list(wishes, most);
    }

    /**
     * Why each set-up of the method that {@link #plan(Part, int, Wishes)} finds is not held otherwise. It takes longer than
     * planning does, and is worked out only for whoever asks. A block has one vice to each machine, and nothing to say.
     */
    public List<NotTaken> whyNot(Part part, int count, Wishes wishes) {
        if (!Unplanned.reasons(part.body()).isEmpty()) {
            return List.of();
        }
        Part aimed = Aim.at(part);
        var bidden = new Bidden(wishes, kit);
        Candidates candidates = bidden.among(StockChooser.candidates(aimed, count, rack, CuttingUp.with(kit)));
        return switch (aimed.body()) {
            case Body.Turned turned ->
                new TurnedPlanner(kit, aimed, turned, bidden).whyNot(count, candidates, Names.of(kit, rack, part));
            case Body.Block block -> List.of();
        };
    }

    /**
     * The method of a planner that never looks ahead: first stock, first machine, all that can be done there, and so on. It is
     * what the search is measured against. Empty where that leads nowhere, and for blocks, of which there is no choice.
     */
    public Optional<PlainMethod> inFixedOrder(Part part, int count) {
        Part aimed = Aim.at(part);
        Candidates candidates = StockChooser.candidates(aimed, count, rack, CuttingUp.with(kit));
        return switch (aimed.body()) {
            case Body.Turned turned ->
                new TurnedPlanner(kit, aimed, turned, new Bidden(Wishes.NONE, kit)).inFixedOrder(count, candidates);
            case Body.Block block -> Optional.empty();
        };
    }

    /** As asked, without a second look at why there is nothing. */
    Planned within(Part part, int count, Wishes wishes) {
        return plan(part, count, wishes, Haste.NONE);
    }

    /** As asked, giving up early: for what is nice to know but need not be found. */
    Planned hastily(Part part, int count, Wishes wishes) {
        return plan(part, count, wishes, Haste.SOME);
    }

    private Planned plan(Part part, int count, Wishes wishes, Haste haste) {
        List<Reason> unplanned = Unplanned.reasons(part.body());
        if (!unplanned.isEmpty()) {
            return new Planned.NotHere(unplanned);
        }
        Part aimed = Aim.at(part);
        var bidden = new Bidden(wishes, kit);
        Candidates all = StockChooser.candidates(aimed, count, rack, CuttingUp.with(kit));
        if (all.fit().isEmpty()) {
            return new Planned.NotHere(List.of(Reasons.noStock(aimed, all.passedOver())));
        }
        Candidates candidates = bidden.among(all);
        return switch (aimed.body()) {
            case Body.Turned turned -> new TurnedPlanner(kit, aimed, turned, bidden).plan(count, candidates, haste);
            case Body.Block block -> new BlockPlanner(kit, aimed, block, bidden).plan(count, candidates);
        };
    }
}
