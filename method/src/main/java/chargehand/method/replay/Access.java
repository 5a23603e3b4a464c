package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where tools may come while turned work is held in one way.
 *
 * @param clear the stretch of the axis on which the outside can be cut
 * @param blocked what stands beside that stretch or on it, each in the way of a tool
 * @param facing the ends that can be faced
 * @param axial the ends into which a tool can go along the axis
 */
record Access(Span clear, List<Obstacle> blocked, Set<End> facing, Set<End> axial) {
    /** Half of what the bearing pads of a fixed steady take up along the work (common practice). */
    static final Length STEADY_HALF_WIDTH = Length.mm(8);

    /** The most that a bore's edge takes up between the face of the work and where jaws that open in it begin to bear. */
    private static final Length BORE_EDGE = Length.mm(6);

    /** How far clamps and nuts stand out from the face they bear on (common practice). */
    private static final Length CLAMP_HEIGHT = Length.mm(15);

    /** Farther along the axis than any work reaches. */
    private static final Length FAR = Length.mm(100_000);

    Access {
        blocked = List.copyOf(blocked);
        facing = Set.copyOf(facing);
        axial = Set.copyOf(axial);
    }

    /** Something a tool must not run into. */
    record Obstacle(String name, Span span) {}

    static Access of(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> inChuck(chuck);
            case Holding.InCollet collet -> chucked(collet.grip(), collet.headstock(), collet.support());
            case Holding.InDividingHead head -> chucked(head.grip(), head.headstock(), head.support());
            case Holding.BetweenCentres centres -> betweenCentres(centres);
            case Holding.OnFaceplate plate -> onFaceplate(plate);
            case Holding.OnStub stub ->
                new Access(open(), List.of(), EnumSet.of(stub.headstock().other()), Set.of());
            case Holding.OnMandrel mandrel -> new Access(open(), List.of(), EnumSet.allOf(End.class), Set.of());
            case Holding.LaidAcross laid -> new Access(open(), List.of(), Set.of(), Set.of());
            case Holding.InVice vice -> new Access(open(), List.of(), Set.of(), Set.of());
            case Holding.OnTable table -> new Access(open(), List.of(), Set.of(), up(table));
            case Holding.Clamped clamped -> new Access(open(), List.of(), Set.of(), Set.of());
        };
    }

    private static Access inChuck(Holding.InChuck chuck) {
        Holding.Grip grip = chuck.grip();
        return switch (chuck.bearing()) {
            case Holding.Bearing.Opening opening -> opening(chuck);
            case Holding.Bearing.SoftJaws soft -> inSoftJaws(chuck);
            case Holding.Bearing.Closing closing -> chucked(grip, chuck.headstock(), chuck.support());
            case Holding.Bearing.SplitBush bush -> chucked(grip, chuck.headstock(), chuck.support());
        };
    }

    /** A thin disc in a step of soft jaws is faced and no more: a drill would drag it round or push it askew. */
    private static Access inSoftJaws(Holding.InChuck chuck) {
        Access access = chucked(chuck.grip(), chuck.headstock(), chuck.support());
        boolean step = chuck.grip()
                .length()
                .isLessThan(Believable.leastSeated(chuck.grip().diameter()));
        return step ? new Access(access.clear(), access.blocked(), access.facing(), Set.of()) : access;
    }

    /** Jaws in the bore leave the outside clear as far as they reach in, and keep every tool out of the bore. */
    private static Access opening(Holding.InChuck chuck) {
        End free = chuck.headstock().other();
        Length back = free == End.A ? chuck.grip().to() : chuck.grip().from();
        Length body = chuck.headstock().from(back, BORE_EDGE);
        return new Access(
                beyond(body, free),
                List.of(new Obstacle("chuck", beyond(body, chuck.headstock()))),
                Set.of(free),
                Set.of());
    }

    /** Clamps and their nuts turn with the work: nothing beside them is cut, and what they stand on is not faced. */
    private static Access onFaceplate(Holding.OnFaceplate plate) {
        End free = plate.headstock().other();
        Length nuts = free.from(plate.clamped(), CLAMP_HEIGHT);
        return new Access(
                beyond(nuts, free),
                List.of(new Obstacle("clamps", beyond(nuts, plate.headstock()))),
                plate.rim() ? Set.of() : Set.of(free),
                Set.of(free));
    }

    /** The end that points up, of work that stands on the other. */
    private static Set<End> up(Holding.OnTable table) {
        return switch (table.down()) {
            case LEFT -> Set.of(End.B);
            case RIGHT -> Set.of(End.A);
            case NEAR, FAR, BOTTOM, TOP -> Set.of();
        };
    }

    private static Span open() {
        return new Span(FAR.negated(), FAR);
    }

    /** Beyond a position towards an end. */
    private static Span beyond(Length at, End end) {
        return end == End.A ? new Span(FAR.negated(), at) : new Span(at, FAR);
    }

    private static Access chucked(Holding.Grip grip, End headstock, Holding.Support support) {
        End free = headstock.other();
        Length front = free == End.A ? grip.from() : grip.to();
        var jaws = new Obstacle("jaws", beyond(front, headstock));
        return switch (support) {
            case Holding.Support.None none ->
                new Access(beyond(front, free), List.of(jaws), Set.of(free), Set.of(free));
            case Holding.Support.Centre centre -> new Access(beyond(front, free), List.of(jaws), Set.of(), Set.of());
            case Holding.Support.TravellingSteady steady ->
                new Access(beyond(front, free), List.of(jaws), Set.of(), Set.of());
            case Holding.Support.FixedSteady steady ->
                new Access(beyond(front, free), List.of(jaws, pads(steady)), Set.of(free), Set.of(free));
        };
    }

    private static Obstacle pads(Holding.Support.FixedSteady steady) {
        return new Obstacle(
                "steady",
                new Span(steady.at().minus(STEADY_HALF_WIDTH), steady.at().plus(STEADY_HALF_WIDTH)));
    }

    private static Access betweenCentres(Holding.BetweenCentres centres) {
        Holding.Grip dog = centres.dog();
        Length front = centres.driven() == End.A ? dog.to() : dog.from();
        return new Access(
                beyond(front, centres.driven().other()),
                List.of(new Obstacle("dog", beyond(front, centres.driven()))),
                Set.of(),
                Set.of());
    }

    /** What a cut over this stretch would run into. */
    Optional<Obstacle> inTheWayOf(Span cut) {
        return blocked.stream().filter(each -> each.span().meets(cut)).findFirst();
    }
}
