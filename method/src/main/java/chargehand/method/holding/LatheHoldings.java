package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.holding.GripRules.Steadying;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The ways one lathe can hold the work as it stands, in chuck or collet, with or without a centre at the outer end. */
final class LatheHoldings {
    private final Lathe lathe;
    private final Standing work;
    private final Walls walls;
    private final List<Choice> choices = new ArrayList<>();

    private LatheHoldings(Lathe lathe, Standing work, Walls walls) {
        this.lathe = lathe;
        this.work = work;
        this.walls = walls;
    }

    static List<Choice> list(Lathe lathe, Standing work, Walls walls) {
        var holdings = new LatheHoldings(lathe, work, walls);
        if (!largestSwing(work).isMoreThan(lathe.room().overSlide())) {
            for (End headstock : End.values()) {
                holdings.addAll(headstock);
            }
        }
        return holdings.choices;
    }

    static Length largestSwing(Standing work) {
        Length largest = Length.ZERO;
        for (int i = 0; i < work.shape().count(); i++) {
            largest = Length.most(largest, work.diameter(i));
        }
        return largest;
    }

    private void addAll(End headstock) {
        for (Steadying support : Steadying.values()) {
            if (supports(headstock, support)) {
                for (Chuck chuck : lathe.holders().chucks()) {
                    GripPlace.list(work, headstock, chuck.jawLength())
                            .forEach(place -> addChuck(place, chuck, support));
                    chuck.soft()
                            .ifPresent(soft -> GripPlace.list(work, headstock, soft.jawLength())
                                    .forEach(place -> addSoft(place, chuck, soft, support)));
                }
                for (ColletSet collets : lathe.holders().collets()) {
                    GripPlace.list(work, headstock, collets.gripLength())
                            .forEach(place -> addCollet(place, collets, support));
                }
            }
        }
        var opening = new OpeningHoldings(lathe, work, walls);
        BoreGrip.list(work, headstock)
                .forEach(bore -> lathe.holders()
                        .chucks()
                        .forEach(chuck -> opening.of(bore, chuck).ifPresent(choices::add)));
    }

    /** A centre needs its hole at the outer end; a steady needs to be owned and to take the work. */
    private boolean supports(End headstock, Steadying support) {
        boolean centred = work.isDone(new Task.CentreIn(headstock.other()));
        return switch (support) {
            case NONE -> true;
            case CENTRE -> centred;
            case TRAVELLING_STEADY ->
                centred
                        && lathe.holders()
                                .travellingSteady()
                                .filter(range -> range.contain(largestSwing(work)))
                                .isPresent();
        };
    }

    private void addChuck(GripPlace place, Chuck chuck, Steadying support) {
        boolean even = place.sides() == 0 || chuck.sitsEvenlyOn(place.sides());
        Length grip = place.grip(chuck.jawLength());
        if (!even || !chuck.grips(place.diameter()) || !isSound(place, grip, chuck.jawLength(), support)) {
            return;
        }
        boolean packed = place.gripped() instanceof Choice.Gripped.OnSection;
        var holding = new Holding.InChuck(
                chuck.name(),
                chuck.jaws(),
                new Holding.Bearing.Closing(packed),
                gripped(place, grip),
                place.headstock(),
                support(support),
                GripRules.runOut(chuck, packed));
        if (!walls.isNipped(work, holding.grip(), holding.bearing())) {
            add(place, holding, support, Costing.jaws(chuck, support));
        }
    }

    /** Soft jaws want a true surface, and none but a round one is bored for. */
    private void addSoft(GripPlace place, Chuck chuck, Chuck.SoftJaws soft, Steadying support) {
        Length grip = place.grip(soft.jawLength());
        boolean fits = place.sides() == 0 && isTrue(place) && soft.outside().contain(place.diameter());
        if (!fits || !isSound(place, grip, soft.jawLength(), support)) {
            return;
        }
        var holding = new Holding.InChuck(
                chuck.name(),
                chuck.jaws(),
                new Holding.Bearing.SoftJaws(),
                gripped(place, grip),
                place.headstock(),
                support(support),
                soft.runOut());
        add(place, holding, support, Costing.softJaws(support));
    }

    private void add(GripPlace place, Holding.InChuck holding, Steadying support, Choice.Costs costs) {
        Length outOfRound = walls.outOfRound(holding.grip(), holding.bearing(), holding.jaws());
        choices.add(choice(place, holding, support, costs).pressed(outOfRound, walls.working(holding, lathe.unit())));
    }

    private void addCollet(GripPlace place, ColletSet collets, Steadying support) {
        Length grip = place.grip(collets.gripLength());
        boolean fits = place.sides() == 0
                && isTrue(place)
                && collets.colletFor(place.diameter()).isPresent();
        if (!fits || !isSound(place, grip, collets.gripLength(), support)) {
            return;
        }
        var holding = new Holding.InCollet(
                collets.name(), gripped(place, grip), place.headstock(), support(support), collets.runOut());
        choices.add(choice(place, holding, support, Costing.collet(support)));
    }

    /** A collet wants a true surface: a turned one, or bright bar. */
    private boolean isTrue(GripPlace place) {
        return !(place.gripped() instanceof Choice.Gripped.Raw) || work.isBright();
    }

    private boolean isSound(GripPlace place, Length grip, Length jawLength, Steadying support) {
        Overhang overhang = Overhang.of(work, place);
        boolean centred = support != Steadying.NONE;
        return !grip.isLessThan(GripRules.leastGrip(place.diameter(), overhang.length(), centred))
                && passesBehind(place, jawLength)
                && overhang.slenderness() <= GripRules.mostOut(support)
                && !overhang.length().isMoreThan(lathe.room().betweenCentres());
    }

    /** What reaches further back than the jaws must pass through the spindle. */
    private boolean passesBehind(GripPlace place, Length jawLength) {
        Length behind = place.headstock().distance(place.jawFront(), work.outerEnd(place.headstock()));
        boolean reachesThrough = work.isLong() || behind.isMoreThan(jawLength);
        return !reachesThrough || !overCorners(place).isMoreThan(lathe.room().spindleBore());
    }

    private Length overCorners(GripPlace place) {
        return switch (place.gripped()) {
            case Choice.Gripped.Raw raw -> Blanks.swing(work.blank());
            case Choice.Gripped.OnSection section -> work.diameter(section.index());
            case Choice.Gripped.OnBore bore -> place.diameter();
            case Choice.Gripped.OnCentres centres -> place.diameter();
        };
    }

    private static Holding.Grip gripped(GripPlace place, Length grip) {
        Length front = place.jawFront();
        Length back = place.headstock().from(front, grip);
        return new Holding.Grip(Length.least(front, back), Length.most(front, back), place.diameter());
    }

    private static Holding.Support support(Steadying support) {
        return switch (support) {
            case NONE -> new Holding.Support.None();
            case CENTRE -> new Holding.Support.Centre();
            case TRAVELLING_STEADY -> new Holding.Support.TravellingSteady();
        };
    }

    private Choice choice(GripPlace place, Holding holding, Steadying support, Choice.Costs costs) {
        Overhang overhang = Overhang.of(work, place);
        End free = place.headstock().other();
        boolean axial = support == Steadying.NONE && overhang.slenderness() <= GripRules.most(support);
        Set<End> faces = axial ? EnumSet.of(free) : EnumSet.noneOf(End.class);
        return new Choice(
                lathe,
                holding,
                Choice.Work.TURNING,
                clear(place, support),
                faces,
                place.gripped(),
                work.isLong() ? Costing.onBar(costs) : costs,
                HoldingWords.instructions(holding, place, overhang, lathe.unit()),
                HeldWorking.of(overhang, support, holding.runOut(), lathe.unit()));
    }

    /** From the jaws as far out as the work is stiff enough to be cut. */
    private Choice.Stretch clear(GripPlace place, Steadying support) {
        End free = place.headstock().other();
        Length end = free.from(Overhang.stiffTo(work, place, GripRules.most(support)), GripRules.CLEARANCE);
        return new Choice.Stretch(Length.least(place.stop(), end), Length.most(place.stop(), end));
    }
}
