package chargehand.method.holding;

import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.plan.Holding;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.trade.material.Material;
import java.util.ArrayList;
import java.util.List;

/** Every way in which a shop's kit can hold a piece of turned work as it stands. */
public final class Holdings {
    private final Kit kit;
    private final Walls walls;

    /** @param material what the work is of, for how it gives where it is pressed */
    public Holdings(Kit kit, Body.Turned body, Material material) {
        this.kit = kit;
        this.walls = new Walls(body, material);
    }

    /** The choices, in the order of the kit. */
    public List<Choice> list(Standing work) {
        var choices = new ArrayList<Choice>();
        for (Lathe lathe : kit.lathes()) {
            choices.addAll(LatheHoldings.list(lathe, work, walls));
            onFaceplate(lathe, work, choices);
            choices.addAll(CentreHoldings.list(lathe, work, kit.tooling().mandrels(), walls.hollow()));
        }
        steadied(work, choices);
        for (Mill mill : kit.mills()) {
            mill.dividingHead().ifPresent(head -> choices.addAll(TableHoldings.dividing(mill, head, work, walls)));
            mill.dividingHead()
                    .ifPresent(head -> choices.addAll(MillHoldings.onMandrel(
                            mill, head, work, kit.tooling().mandrels(), walls.hollow())));
            choices.addAll(MillHoldings.upright(mill, work));
            choices.addAll(TableHoldings.inVees(mill, work));
            mill.vices().forEach(vice -> choices.addAll(TableHoldings.inVice(mill, vice, work)));
        }
        for (RadialDrill drill : kit.drills()) {
            choices.addAll(TableHoldings.inVees(drill, work));
        }
        return choices;
    }

    /** Work goes on the faceplate only where no jaws that are dialled one by one leave the same end open. */
    private void onFaceplate(Lathe lathe, Standing work, List<Choice> choices) {
        FaceplateHoldings.list(lathe, work, walls.hollow()).stream()
                .filter(plate -> choices.stream()
                        .noneMatch(
                                other -> isDialled(other, lathe) && other.open().containsAll(plate.open())))
                .toList()
                .forEach(choices::add);
    }

    private static boolean isDialled(Choice choice, Lathe lathe) {
        return choice.machine().equals(lathe) && choice.holding() instanceof Holding.InChuck chuck && chuck.jaws() == 4;
    }

    /** A fixed steady is set up only for an end that is worked close to the jaws on no lathe. */
    private void steadied(Standing work, List<Choice> choices) {
        for (End free : End.values()) {
            if (choices.stream().noneMatch(choice -> choice.faces().contains(free))) {
                kit.lathes().forEach(lathe -> choices.addAll(LatheHoldings.steadied(lathe, work, walls, free)));
            }
        }
    }
}
