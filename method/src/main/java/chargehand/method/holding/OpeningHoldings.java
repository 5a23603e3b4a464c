package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.trade.sum.Working;
import java.util.Optional;
import java.util.Set;

/** Work held by its finished bore, the jaws of a chuck opening in it: all of its outside and the far face stand clear. */
final class OpeningHoldings {
    private static final Holding.Bearing BEARING = new Holding.Bearing.Opening(true);

    private final Lathe lathe;
    private final Standing work;
    private final Walls walls;

    OpeningHoldings(Lathe lathe, Standing work, Walls walls) {
        this.lathe = lathe;
        this.work = work;
        this.walls = walls;
    }

    Optional<Choice> of(BoreGrip bore, Chuck chuck) {
        Length length = bore.grip(chuck.jawLength());
        Length overhang = work.face(End.B).minus(work.face(End.A)).minus(length);
        boolean holds = chuck.gripsInside(bore.diameter())
                && !length.isLessThan(GripRules.leastGrip(bore.diameter(), overhang, false));
        if (!holds) {
            return Optional.empty();
        }
        End inward = bore.headstock().other();
        Length inner = inward.from(bore.outer(), length);
        var grip =
                new Holding.Grip(Length.least(bore.outer(), inner), Length.most(bore.outer(), inner), bore.diameter());
        return walls.isNipped(work, grip, BEARING) ? Optional.empty() : Optional.of(choice(bore, chuck, grip));
    }

    private Choice choice(BoreGrip bore, Chuck chuck, Holding.Grip grip) {
        var holding = new Holding.InChuck(
                chuck.name(),
                chuck.jaws(),
                BEARING,
                grip,
                bore.headstock(),
                new Holding.Support.None(),
                GripRules.runOut(chuck, true));
        var working = new Working();
        working.fact(
                "Run-out as held, as measured for this chuck",
                LengthText.in(holding.runOut(), lathe.unit()) + " total indicator reading",
                GripRules.SOURCE);
        return new Choice(
                        lathe,
                        holding,
                        Choice.Work.TURNING,
                        new Choice.Stretch(work.face(End.A), work.face(End.B)),
                        Set.of(bore.headstock().other()),
                        new Choice.Gripped.OnBore(bore.index()),
                        Costing.jaws(chuck, holding.support()),
                        HoldingWords.opening(holding, lathe.unit()),
                        working.steps())
                .pressed(
                        walls.outOfRound(grip, BEARING, chuck.jaws()),
                        walls.isThin(grip, BEARING),
                        walls.working(holding, lathe.unit()));
    }
}
