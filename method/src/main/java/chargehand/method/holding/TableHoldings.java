package chargehand.method.holding;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Holding;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.wish.HolderName;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.Across;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The ways turned work is held on mill and drill: in the dividing head, or laid along a vice or in vees. */
final class TableHoldings {
    private static final Length LEAST_LAID = Length.mm(10);

    private static final String VEES = HolderName.VEES;

    /** The head's jaws are packed where they bear on what is finished. */
    private static final Holding.Bearing PACKED = new Holding.Bearing.Closing(true);

    private TableHoldings() {}

    /** In the dividing head's own chuck, with its tail centre where the work stands far out. */
    static List<Choice> dividing(Mill mill, DividingHead head, Standing work, Walls walls) {
        var choices = new ArrayList<Choice>();
        if (work.isLong()) {
            return choices;
        }
        for (End headstock : End.values()) {
            for (GripPlace place : GripPlace.list(work, headstock, head.chuck().jawLength())) {
                for (Holding.Support support : List.of(new Holding.Support.None(), new Holding.Support.Centre())) {
                    inHead(mill, head, work, new Supported(place, support))
                            .filter(choice -> choice.holding() instanceof Holding.InDividingHead held
                                    && !walls.isNipped(work, held.grip(), PACKED))
                            .ifPresent(choices::add);
                }
            }
        }
        return choices;
    }

    private record Supported(GripPlace place, Holding.Support support) {}

    private static Optional<Choice> inHead(Mill mill, DividingHead head, Standing work, Supported held) {
        Chuck chuck = head.chuck();
        GripPlace place = held.place();
        boolean centre = held.support() instanceof Holding.Support.Centre;
        Length grip = place.grip(chuck.jawLength());
        End free = place.headstock().other();
        Length behind = place.headstock().distance(place.jawFront(), work.outerEnd(place.headstock()));
        Length widest = place.gripped() instanceof Choice.Gripped.Raw ? Blanks.swing(work.blank()) : place.diameter();
        Overhang overhang = Overhang.of(work, place);
        boolean fits = chuck.grips(place.diameter())
                && (place.sides() == 0 || chuck.sitsEvenlyOn(place.sides()))
                && !grip.isLessThan(GripRules.leastGrip(place.diameter(), overhang.length(), centre))
                && (!behind.isMoreThan(chuck.jawLength()) || !widest.isMoreThan(head.spindleBore()))
                && overhang.slenderness() <= GripRules.most(held.support())
                && (!centre || (head.tailCentre() && work.isDone(new Task.CentreIn(free))));
        if (!fits) {
            return Optional.empty();
        }
        Length back = place.headstock().from(place.jawFront(), grip);
        var gripped = new Holding.Grip(
                Length.least(place.jawFront(), back), Length.most(place.jawFront(), back), place.diameter());
        Length runOut = chuck.isIndependent() ? GripRules.DIALLED : chuck.runOut();
        var holding = new Holding.InDividingHead(head.name(), gripped, place.headstock(), held.support(), runOut);
        Length end = free.from(work.face(free), GripRules.CLEARANCE);
        return Optional.of(new Choice(
                mill,
                holding,
                Choice.Work.DIVIDING,
                new Choice.Stretch(Length.least(place.stop(), end), Length.most(place.stop(), end)),
                Set.of(),
                place.gripped(),
                Costing.dividingHead(chuck.isIndependent()),
                HoldingWords.instructions(holding, place, overhang, mill.unit()),
                HeldWorking.of(overhang, held.support(), runOut, mill.unit())));
    }

    /** Laid in the vees of a drill, turned so that the hole stands upright. */
    static List<Choice> inVees(RadialDrill drill, Standing work) {
        return drill.vees()
                .map(range ->
                        laid(drill, new Laid(VEES, range.least(), range.most()), work, Choice.Work.CROSS_DRILLING))
                .orElse(List.of());
    }

    /** In the vees of a mill, for keyways. */
    static List<Choice> inVees(Mill mill, Standing work) {
        return mill.vees()
                .map(range -> laid(mill, new Laid(VEES, range.least(), range.most()), work, Choice.Work.KEYWAYING))
                .orElse(List.of());
    }

    /** Along the jaws of a mill's vice, for keyways. */
    static List<Choice> inVice(Mill mill, Vice vice, Standing work) {
        return laid(mill, new Laid(vice.name(), Length.mm(3), vice.opening()), work, Choice.Work.KEYWAYING);
    }

    private record Laid(String name, Length least, Length most) {
        boolean takes(Length diameter) {
            return !diameter.isLessThan(least) && !diameter.isMoreThan(most);
        }
    }

    private static List<Choice> laid(Machine machine, Laid laid, Standing work, Choice.Work kind) {
        var choices = new ArrayList<Choice>();
        if (work.isOnBar()) {
            return choices;
        }
        for (Angle around : angles(work, kind)) {
            longestPlain(work)
                    .filter(index -> laid.takes(work.diameter(index)))
                    .ifPresent(index -> choices.add(across(machine, laid, work, new Position(index, around, kind))));
        }
        return choices;
    }

    private record Position(int section, Angle around, Choice.Work kind) {}

    private static Choice across(Machine machine, Laid laid, Standing work, Position position) {
        Shape shape = work.shape();
        int index = position.section();
        var grip = new Holding.Grip(
                shape.start(index).plus(edge(shape.edge(index, End.A))),
                shape.end(index).minus(edge(shape.edge(index, End.B))),
                work.diameter(index));
        boolean drilling = position.kind() == Choice.Work.CROSS_DRILLING;
        return new Choice(
                machine,
                new Holding.LaidAcross(laid.name(), grip, position.around()),
                position.kind(),
                new Choice.Stretch(work.face(End.A), work.face(End.B)),
                Set.of(),
                new Choice.Gripped.OnSection(index),
                drilling ? Costing.vees() : Costing.millVice(),
                drilling ? HoldingWords.vees(laid.name()) : HoldingWords.along(laid.name()),
                List.of());
    }

    /** A section's length between its edges. */
    private static Length plainLength(Shape shape, int index) {
        return shape.section(index)
                .length()
                .minus(edge(shape.edge(index, End.A)))
                .minus(edge(shape.edge(index, End.B)));
    }

    /** How much of a section an edge takes up. */
    private static Length edge(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Chamfer chamfer -> chamfer.length().length();
            case Edge.WeldPreparation prepared -> prepared.reach();
            case Edge.Radius radius -> radius.radius().length();
        };
    }

    /** The longest finished plain section: what work is laid on. */
    private static Optional<Integer> longestPlain(Standing work) {
        Shape shape = work.shape();
        Optional<Integer> longest = Optional.empty();
        for (int i = 0; i < shape.count(); i++) {
            boolean plain = shape.section(i) instanceof Section.Round && !work.isRaw(i);
            Length length = plainLength(shape, i);
            if (plain
                    && !length.isLessThan(LEAST_LAID)
                    && longest.filter(best -> !plainLength(shape, best).isLessThan(length))
                            .isEmpty()) {
                longest = Optional.of(i);
            }
        }
        return longest;
    }

    /** The angles round the axis at which something is still to be cut. */
    private static Set<Angle> angles(Standing work, Choice.Work kind) {
        var angles = new TreeSet<Angle>();
        for (int i = 0; i < work.shape().body().across().size(); i++) {
            Across across = work.shape().body().across().get(i);
            if (!work.isDone(new Task.Crossing(i, across))) {
                switch (across) {
                    case Across.CrossHole hole when kind == Choice.Work.CROSS_DRILLING -> angles.add(hole.around());
                    case Across.CrossHole hole -> {}
                    case Across.Keyway keyway when kind == Choice.Work.KEYWAYING -> angles.add(keyway.around());
                    case Across.Keyway keyway -> {}
                    case Across.Flat flat -> {}
                    case Across.TaperPin pin -> {}
                    case Across.Slit slit -> {}
                }
            }
        }
        return angles;
    }
}
