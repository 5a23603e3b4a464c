package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import java.util.Optional;

/** The trade's order on the outside: each cut finds the work as it must be before it. */
final class OutsideCheck {
    /** A thread's stretch is at its major diameter but for its chamfered ends: at least this share of it. */
    private static final double LEAST_AT_MAJOR = 0.5;

    private final TurnedWork work;
    private final Holding holding;
    private final FaultList faults;

    OutsideCheck(TurnedWork work, Holding holding, FaultList faults) {
        this.work = work;
        this.holding = holding;
        this.faults = faults;
    }

    /** Nothing is turned over a finished thread. */
    void turn(Length from, Length to) {
        boolean spoils = Span.between(from, to)
                .filter(span -> work.features().threads().stream()
                        .anyMatch(thread -> !thread.inside() && thread.over().meets(span)))
                .isPresent();
        faults.unless(!spoils, Fault.Code.SPOILS_THREAD, () -> "a thread that is already cut would be cut into");
    }

    void face(Cut.FaceEnd face) {
        Length off = face.end().distance(face.at(), work.face(face.end()));
        turn(face.at(), work.face(face.end()));
        faults.unless(
                !off.isMoreThan(Believable.MOST_FACED),
                Fault.Code.WRONG_PASSES,
                () -> "a stub of " + faults.size(off) + " is parted or sawn off, not faced away");
    }

    void edge(Cut.FinishEdge edge) {
        boolean there = EdgeCut.path(work, edge).isPresent();
        faults.unless(
                there,
                Fault.Code.NO_CORNER,
                () -> "there is no corner of " + faults.size(edge.diameter()) + " at " + faults.size(edge.at()));
        if (!edge.inside()) {
            turn(edge.at(), edge.towards().from(edge.at(), EdgePath.reach(edge.form())));
        }
    }

    void thread(Cut.ThreadOutside cut) {
        Optional<Span> over = Span.between(cut.from(), cut.to());
        boolean twice = over.filter(span -> work.features().threads().stream()
                        .anyMatch(thread -> !thread.inside() && thread.over().meets(span)))
                .isPresent();
        faults.unless(!twice, Fault.Code.MADE_TWICE, () -> "there is a thread already where this one is to be cut");
        faults.unless(
                over.filter(span -> cut.thread().isTaper() || isAtMajor(cut, span))
                        .isPresent(),
                Fault.Code.WRONG_BLANK,
                () -> "the stretch for " + cut.thread() + " is not at "
                        + faults.size(cut.thread().major()));
        if (cut.way() == Cut.ThreadWay.DIE_FROM_TAILSTOCK) {
            over.ifPresent(span -> die(cut, span));
        }
    }

    private boolean isAtMajor(Cut.ThreadOutside cut, Span span) {
        Length major = cut.thread().major();
        if (!work.span().holds(span, Deviation.ALLOWED) || !work.largest(span).isWithin(Deviation.ALLOWED, major)) {
            return false;
        }
        Length level = Level.of(Carving.cut(work.outer(), span), major.half(), Deviation.ALLOWED);
        return level.over(span.length()) >= LEAST_AT_MAJOR;
    }

    /** A die comes on from the free end, over everything that lies before the thread, and no centre may be in its way. */
    private void die(Cut.ThreadOutside cut, Span span) {
        Access access = Access.of(holding);
        boolean open = access.axial().stream().anyMatch(end -> isOpen(cut, span, end));
        faults.unless(open, Fault.Code.DIE_BLOCKED, () -> "the die for " + cut.thread() + " cannot come over the end");
    }

    private boolean isOpen(Cut.ThreadOutside cut, Span span, End end) {
        return Span.between(span.border(end), work.face(end))
                .filter(before -> end.distance(span.border(end), work.face(end)).isPositive())
                .map(before ->
                        !work.largest(before).isMoreThan(cut.thread().core().plus(Deviation.ALLOWED)))
                .orElse(true);
    }

    /** Parting severs the work; a centre or steady at its end would jam it. */
    void part(Cut.PartOff part) {
        boolean within = Span.between(part.from(), part.to())
                .filter(slot -> work.span().holds(slot, Length.ZERO))
                .isPresent();
        faults.unless(within, Fault.Code.NOTHING_TO_CUT, () -> "there is nothing to part off there");
        turn(part.from(), part.to());
        faults.unless(
                !Access.of(holding).axial().isEmpty(),
                Fault.Code.TOOL_FOULS,
                () -> "work is never parted with a centre in its end");
    }

    void flats(Cut.MillFlats cut) {
        Optional<Span> over = Span.between(cut.from(), cut.to());
        boolean round = over.filter(span -> work.span().holds(span, Deviation.ALLOWED))
                .filter(span -> work.largest(span).isMoreThan(cut.flats()))
                .isPresent();
        faults.unless(
                round,
                Fault.Code.WRONG_BLANK,
                () -> "the round is not large enough for flats of " + faults.size(cut.flats()));
        boolean twice = over.filter(span -> work.features().flats().stream()
                        .flatMap(flats -> StandingFlats.on(work.outer(), flats.across(), flats.over()).stream())
                        .anyMatch(span::meets))
                .isPresent();
        faults.unless(!twice, Fault.Code.MADE_TWICE, () -> "there are flats already where these are to be milled");
        faults.unless(
                holding instanceof Holding.InDividingHead,
                Fault.Code.NO_HOLDER,
                () -> "flats are milled in the dividing head");
        turn(cut.from(), cut.to());
    }

    void hole(Cut.DrillAcross hole) {
        faults.unless(
                !work.features().holes().contains(hole), Fault.Code.MADE_TWICE, () -> "that hole is there already");
        across(hole.around().degrees());
        boolean metal = CutPlace.of(hole)
                .filter(place ->
                        place instanceof CutPlace.Beside beside && work.span().meets(beside.span()))
                .isPresent();
        faults.unless(metal, Fault.Code.NOTHING_TO_CUT, () -> "there is no metal at " + faults.size(hole.at()));
    }

    void keyway(Cut.MillKeyway keyway) {
        faults.unless(
                !work.features().keyways().contains(keyway),
                Fault.Code.MADE_TWICE,
                () -> "that keyway is there already");
        across(keyway.around().degrees());
        boolean metal = Span.between(keyway.from(), keyway.from().plus(keyway.length()))
                .filter(span -> work.span().holds(span, Deviation.ALLOWED))
                .isPresent();
        faults.unless(metal, Fault.Code.NOTHING_TO_CUT, () -> "there is no metal for the keyway to lie in");
    }

    private void across(double degrees) {
        boolean turned = holding instanceof Holding.LaidAcross laid
                && Math.abs(laid.around().degrees() - degrees) <= Believable.ANGLE_NEAR;
        faults.unless(turned, Fault.Code.WRONG_SIDE, () -> "the work is not laid across and turned to that angle");
    }
}
