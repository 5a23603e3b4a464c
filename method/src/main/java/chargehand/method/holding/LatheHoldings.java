package chargehand.method.holding;

import chargehand.measure.Length;
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

    /** The ways to hold the work with the fixed steady, for an end that cannot be brought close to any jaws. */
    static List<Choice> steadied(Lathe lathe, Standing work, Walls walls, End free) {
        var holdings = new LatheHoldings(lathe, work, walls);
        lathe.holders()
                .fixedSteady()
                .filter(range -> !largestSwing(work).isMoreThan(lathe.room().overSlide()))
                .flatMap(range -> SteadyPlace.find(work, free, range))
                .ifPresent(steady -> holdings.addJaws(free.other(), steady));
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
        supports(headstock).forEach(support -> addJaws(headstock, support));
        var opening = new OpeningHoldings(lathe, work, walls);
        BoreGrip.list(work, headstock)
                .forEach(bore -> lathe.holders()
                        .chucks()
                        .forEach(chuck -> opening.of(bore, chuck).ifPresent(choices::add)));
    }

    private void addJaws(End headstock, Holding.Support support) {
        for (Chuck chuck : lathe.holders().chucks()) {
            places(headstock, chuck.jawLength()).forEach(place -> addChuck(place, chuck, support));
            chuck.soft()
                    .ifPresent(soft ->
                            places(headstock, soft.jawLength()).forEach(place -> addSoft(place, chuck, soft, support)));
            places(headstock, chuck.jawLength()).forEach(place -> addBush(place, chuck, support));
        }
        for (ColletSet collets : lathe.holders().collets()) {
            places(headstock, collets.gripLength()).forEach(place -> addCollet(place, collets, support));
        }
    }

    /** The places for jaws so long; what does not go into the spindle is held no further back than they reach. */
    private List<GripPlace> places(End headstock, Length jawLength) {
        return GripPlace.list(work, headstock, jawLength).stream()
                .map(place -> passesBehind(place, jawLength) ? place : place.flush(work, jawLength))
                .distinct()
                .toList();
    }

    /** A centre needs its hole at the outer end; a steady that follows the tool needs to be owned and to take the work. */
    private List<Holding.Support> supports(End headstock) {
        var supports = new ArrayList<Holding.Support>(List.of(new Holding.Support.None()));
        if (work.isDone(new Task.CentreIn(headstock.other()))) {
            supports.add(new Holding.Support.Centre());
            lathe.holders()
                    .travellingSteady()
                    .filter(range -> range.contain(largestSwing(work)))
                    .ifPresent(range -> supports.add(new Holding.Support.TravellingSteady()));
        }
        return supports;
    }

    private void addChuck(GripPlace place, Chuck chuck, Holding.Support support) {
        boolean even = place.isEvenFor(chuck, work);
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
                support,
                GripRules.runOut(chuck, packed));
        if (!walls.isNipped(work, holding.grip(), holding.bearing())) {
            add(place, holding, support, Costing.jaws(chuck, support));
        }
    }

    /**
     * Soft jaws want a true surface, and none but a round one is bored for. A disc too thin for a grip seats in a step bored in
     * them.
     */
    private void addSoft(GripPlace place, Chuck chuck, Chuck.SoftJaws soft, Holding.Support support) {
        if (place.sides() != 0 || !isTrue(place) || !soft.outside().contain(place.diameter())) {
            return;
        }
        GripPlace step = place.inStep();
        if (isSound(place, place.grip(soft.jawLength()), soft.jawLength(), support)) {
            addSoftly(place, chuck, soft, support);
        } else if (support instanceof Holding.Support.None && step.isHeldInStep(work, step.grip(soft.jawLength()))) {
            addSoftly(step, chuck, soft, support);
        }
    }

    private void addSoftly(GripPlace place, Chuck chuck, Chuck.SoftJaws soft, Holding.Support support) {
        var holding = new Holding.InChuck(
                chuck.name(),
                chuck.jaws(),
                new Holding.Bearing.SoftJaws(),
                gripped(place, place.grip(soft.jawLength())),
                place.headstock(),
                support,
                soft.runOut());
        add(place, holding, support, Costing.softJaws(support));
    }

    /** A split bush is made where soft jaws cannot be bored to the work. */
    private void addBush(GripPlace place, Chuck chuck, Holding.Support support) {
        Length grip = place.grip(chuck.jawLength());
        boolean soft = chuck.soft()
                .filter(jaws -> jaws.outside().contain(place.diameter()))
                .isPresent();
        boolean fits = !soft && place.sides() == 0 && place.gripped() instanceof Choice.Gripped.OnSection;
        if (fits && isSound(place, grip, chuck.jawLength(), support)) {
            BushRules.find(chuck, gripped(place, grip))
                    .map(bush -> new Holding.InChuck(
                            chuck.name(),
                            chuck.jaws(),
                            bush,
                            gripped(place, grip),
                            place.headstock(),
                            support,
                            GripRules.SPLIT_BUSH))
                    .ifPresent(held -> add(place, held, support, Costing.splitBush(support)));
        }
    }

    private void add(GripPlace place, Holding.InChuck holding, Holding.Support support, Choice.Costs costs) {
        Length outOfRound = walls.outOfRound(holding.grip(), holding.bearing(), holding.jaws());
        boolean nips = walls.isThin(holding.grip(), holding.bearing());
        choices.add(
                choice(place, holding, support, costs).pressed(outOfRound, nips, walls.working(holding, lathe.unit())));
    }

    private void addCollet(GripPlace place, ColletSet collets, Holding.Support support) {
        Length grip = place.grip(collets.gripLength());
        boolean fits = place.sides() == 0
                && isTrue(place)
                && collets.colletFor(place.diameter()).isPresent();
        if (!fits || !isSound(place, grip, collets.gripLength(), support)) {
            return;
        }
        var holding = new Holding.InCollet(
                collets.name(), gripped(place, grip), place.headstock(), support, collets.runOut());
        choices.add(choice(place, holding, support, Costing.collet(support)));
    }

    /** A collet wants a true surface: a turned one, or bright bar. */
    private boolean isTrue(GripPlace place) {
        return !(place.gripped() instanceof Choice.Gripped.Raw) || work.isBright();
    }

    private boolean isSound(GripPlace place, Length grip, Length jawLength, Holding.Support support) {
        Overhang overhang = Overhang.of(work, place);
        return !grip.isLessThan(place.leastGrip(work, grip, support))
                && passesBehind(place, jawLength)
                && isStiff(place, overhang, support)
                && !overhang.length().isMoreThan(lathe.room().betweenCentres());
    }

    /** A fixed steady is set up only where the work would not be stiff without it. */
    private boolean isStiff(GripPlace place, Overhang overhang, Holding.Support support) {
        return support instanceof Holding.Support.FixedSteady steady
                ? overhang.slenderness() > GripRules.MOST_UNSUPPORTED && SteadyPlace.holds(work, place, steady)
                : overhang.slenderness() <= GripRules.mostOut(support);
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
            case Choice.Gripped.OnFace face -> place.diameter();
        };
    }

    private static Holding.Grip gripped(GripPlace place, Length grip) {
        Length front = place.jawFront();
        Length back = place.headstock().from(front, grip);
        return new Holding.Grip(Length.least(front, back), Length.most(front, back), place.diameter());
    }

    private Choice choice(GripPlace place, Holding holding, Holding.Support support, Choice.Costs costs) {
        Overhang overhang = Overhang.of(work, place);
        End free = place.headstock().other();
        boolean open = support instanceof Holding.Support.FixedSteady
                || (support instanceof Holding.Support.None && overhang.slenderness() <= GripRules.most(support));
        Set<End> faces = open ? EnumSet.of(free) : EnumSet.noneOf(End.class);
        Overhang weakest = weakest(place, support);
        return new Choice(
                        lathe,
                        holding,
                        Choice.Work.TURNING,
                        clear(place, support),
                        faces,
                        place.gripped(),
                        work.isLong() ? Costing.onBar(costs) : costs,
                        told(holding, place, overhang),
                        HeldWorking.of(stands(place, support), support, holding.runOut(), lathe.unit()))
                .bending(walls.bending().of(weakest, support), walls.bending().working(weakest, support, lathe.unit()));
    }

    /** How it is held, and for an old part what it is dialled by. */
    private List<String> told(Holding holding, GripPlace place, Overhang overhang) {
        var told = new ArrayList<>(HoldingWords.instructions(holding, place, overhang, lathe.unit()));
        if (work.isOldPart() && holding instanceof Holding.InChuck chuck && chuck.jaws() == 4) {
            told.add(HoldingWords.dialled(work.shape().body()));
        }
        return told;
    }

    /** The stretch that bends from the tool: what may be cut, or all the way to a centre. */
    private Overhang weakest(GripPlace place, Holding.Support support) {
        End free = place.headstock().other();
        return switch (support) {
            case Holding.Support.None none ->
                Overhang.between(work, place.jawFront(), Overhang.stiffTo(work, place, GripRules.MOST_UNSUPPORTED));
            case Holding.Support.FixedSteady steady -> Overhang.between(work, steady.at(), work.face(free));
            case Holding.Support.Centre centre -> Overhang.of(work, place);
            case Holding.Support.TravellingSteady steady -> Overhang.of(work, place);
        };
    }

    /** What bends: all that stands out, or what lies between the jaws and a fixed steady. */
    private Overhang stands(GripPlace place, Holding.Support support) {
        return support instanceof Holding.Support.FixedSteady steady
                ? Overhang.between(work, place.jawFront(), steady.at())
                : Overhang.of(work, place);
    }

    /** From the jaws as far out as the work is stiff enough to be cut; beyond a fixed steady, all of it. */
    private Choice.Stretch clear(GripPlace place, Holding.Support support) {
        End free = place.headstock().other();
        return support instanceof Holding.Support.FixedSteady steady
                ? stretch(free.from(steady.at(), SteadyPlace.ROOM), free.from(work.face(free), GripRules.CLEARANCE))
                : stretch(
                        place.stop(),
                        free.from(Overhang.stiffTo(work, place, GripRules.most(support)), GripRules.CLEARANCE));
    }

    private static Choice.Stretch stretch(Length one, Length other) {
        return new Choice.Stretch(Length.least(one, other), Length.most(one, other));
    }
}
