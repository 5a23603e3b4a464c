package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.kit.Lathe;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.part.Bore;
import chargehand.part.Edge;

/** Whether a bore can be made from an end that a holding leaves open. */
final class InsideReach {
    private final Owned owned;
    private final Choice choice;

    InsideReach(Owned owned, Choice choice) {
        this.owned = owned;
        this.choice = choice;
    }

    boolean canMake(Task.Inside task) {
        Bore bore = task.bore();
        boolean fromOwn = choice.open().contains(bore.from());
        boolean fromOther = Bores.isThrough(bore)
                && !(bore instanceof Bore.Coned)
                && Bores.mouth(bore) instanceof Edge.Plain
                && choice.open().contains(bore.from().other());
        return (fromOwn || fromOther) && owned.has(bore) && reachesTo(bore);
    }

    /** A drill in the tailstock goes as deep as its spindle travels; deeper holes are drilled in two settings. */
    private boolean reachesTo(Bore bore) {
        return !(choice.machine() instanceof Lathe lathe)
                || !owned.depth(bore)
                        .isMoreThan(lathe.holders().tailstock().travel().times(2));
    }
}
