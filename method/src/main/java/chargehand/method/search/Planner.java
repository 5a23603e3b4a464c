package chargehand.method.search;

import chargehand.method.aim.Aim;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.part.Body;
import chargehand.part.Part;

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
        Part aimed = Aim.at(part);
        return switch (aimed.body()) {
            case Body.Turned turned -> new TurnedPlanner(kit, rack, aimed, turned).plan(count);
            case Body.Block block -> new BlockPlanner(kit, rack, aimed, block).plan(count);
        };
    }
}
