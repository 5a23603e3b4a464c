package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import java.util.List;
import java.util.Optional;

/** Whether turned work can be gripped where and as a holding says. */
final class GripCheck {
    private final TurnedWork work;
    private final Holding.Grip grip;
    private final End headstock;
    private final FaultList faults;
    private final Span span;

    GripCheck(TurnedWork work, Holding.Grip grip, End headstock, FaultList faults) {
        this.work = work;
        this.grip = grip;
        this.headstock = headstock;
        this.faults = faults;
        this.span = new Span(grip.from(), grip.to());
    }

    /** How many flats the jaws close on; 0 for round. */
    private int sides() {
        return work.features().flats().stream()
                .filter(flats -> flats.across().isWithin(Believable.GRIPPED_NEAR, grip.diameter()))
                .filter(flats -> onFlats(flats).over(grip.length()) >= Believable.LEAST_BEARING)
                .map(Features.FlatsCut::sides)
                .findFirst()
                .orElse(0);
    }

    private Length onFlats(Features.FlatsCut flats) {
        return StandingFlats.on(work.outer(), flats.across(), span).stream()
                .flatMap(shown -> shown.common(flats.over()).stream())
                .map(Span::length)
                .reduce(Length.ZERO, Length::plus);
    }

    /** In a chuck's jaws. */
    void jaws(Chuck chuck) {
        int sides = sides();
        faults.unless(
                chuck.grips(grip.diameter()) && (sides == 0 || chuck.sitsEvenlyOn(sides)),
                Fault.Code.NO_HOLDER,
                () -> "the " + chuck.name() + " does not close evenly on " + faults.size(grip.diameter())
                        + (sides == 0 ? "" : " over " + sides + " flats"));
    }

    /** Jaws on a scroll bear on the tips of a wheel only where their number goes into that of the teeth. */
    void onTeeth(Chuck chuck) {
        teeth().filter(count -> !chuck.isIndependent() && count % chuck.jaws() != 0)
                .ifPresent(count -> faults.add(
                        Fault.Code.NO_HOLDER,
                        "the " + chuck.jaws() + " jaws of the " + chuck.name() + " do not sit evenly on " + count
                                + " teeth"));
    }

    /** How many teeth lie under the grip. */
    private Optional<Integer> teeth() {
        return work.features().teeth().stream()
                .filter(wheel -> new Span(wheel.from(), wheel.to()).meets(span))
                .map(Solid.TeethPlace::count)
                .findFirst();
    }

    /** In one of a set of collets. */
    void collet(ColletSet collets) {
        faults.unless(
                sides() == 0 && collets.colletFor(grip.diameter()).isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "none of the " + collets.name() + " closes on " + faults.size(grip.diameter()));
    }

    /**
     * What goes for every grip from the headstock's side.
     *
     * @param jawLength the most that jaws bear on
     * @param spindleBore what passes through behind them
     * @param supported whether the outer end is held as well
     */
    void rest(Length jawLength, Length spindleBore, boolean supported) {
        rest(least(supported), jawLength, spindleBore);
    }

    /** The same in soft jaws, in which a thin disc may lie in a step. */
    void restSoftly(Length jawLength, Length spindleBore, boolean supported) {
        boolean thin = isSeated(overhang()) && overhang().over(grip.diameter()) <= Believable.THIN;
        rest(thin ? Believable.LEAST_IN_STEP : least(supported), jawLength, spindleBore);
    }

    private Length overhang() {
        return headstock.other().distance(span.border(headstock.other()), work.face(headstock.other()));
    }

    private Length least(boolean supported) {
        return isSeated(overhang())
                ? Believable.leastSeated(grip.diameter())
                : Believable.leastGrip(grip.diameter(), overhang(), supported);
    }

    private void rest(Length least, Length jawLength, Length spindleBore) {
        onMetal();
        Length front = span.border(headstock.other());
        faults.unless(
                !grip.length().isLessThan(least.minus(Deviation.ALLOWED)),
                Fault.Code.GRIP_TOO_SHORT,
                () -> "a grip of " + faults.size(grip.length()) + " does not hold work of "
                        + faults.size(grip.diameter()) + " that stands out " + faults.size(overhang()));
        faults.unless(
                !grip.length().isMoreThan(jawLength.plus(Deviation.ALLOWED)),
                Fault.Code.GRIP_TOO_LONG,
                () -> "the jaws bear on no more than " + faults.size(jawLength));
        behind(front, jawLength, spindleBore);
    }

    /** Whether a disc sits back against the steps of the jaws, so that a short grip keeps it square. */
    private boolean isSeated(Length overhang) {
        Length behind = headstock.distance(span.border(headstock), work.face(headstock));
        return !work.onBar()
                && !behind.isMoreThan(Believable.MOST_BEHIND_SEAT)
                && overhang.over(grip.diameter()) <= Believable.DISC;
    }

    /** The jaws reach back over what lies behind the grip; what lies further back goes into the spindle. */
    private void behind(Length front, Length jawLength, Length spindleBore) {
        Length back = headstock.from(front, jawLength);
        Length face = work.face(headstock);
        boolean jawsClose = Span.between(span.border(headstock), back)
                .filter(between ->
                        headstock.distance(span.border(headstock), back).isPositive())
                .map(between -> !work.largest(between).isMoreThan(overCorners().plus(Believable.GRIPPED_NEAR)))
                .orElse(true);
        boolean passes = work.onBar()
                ? !work.largest(new Span(span.from(), span.to())).isMoreThan(spindleBore)
                : Span.between(back, face)
                        .filter(between -> headstock.distance(back, face).isPositive())
                        .map(between -> !work.largest(between).isMoreThan(spindleBore))
                        .orElse(true);
        faults.unless(
                jawsClose && passes,
                Fault.Code.BLOCKED_BEHIND,
                () -> "what lies behind the jaws neither fits between them nor through the spindle");
    }

    private Length overCorners() {
        return Length.most(grip.diameter(), work.largest(span));
    }

    /** Along a vice or in vees. */
    void laid(List<Vice> vices, Optional<Limits> vees, String holder) {
        boolean inVice = vices.stream()
                .anyMatch(vice -> vice.name().equals(holder) && !grip.diameter().isMoreThan(vice.opening()));
        boolean inVees = vees.filter(range -> range.contain(grip.diameter())).isPresent()
                && vices.stream().noneMatch(vice -> vice.name().equals(holder));
        faults.unless(
                inVice || inVees,
                Fault.Code.NO_HOLDER,
                () -> "there is no " + holder + " here that takes " + faults.size(grip.diameter()));
        onMetal();
        faults.unless(
                !grip.length().isLessThan(Believable.LEAST_GRIP),
                Fault.Code.GRIP_TOO_SHORT,
                () -> faults.size(grip.length()) + " is too little to lie on");
    }

    /** A dog, tightened on the end that is driven. */
    void dog(Optional<Length> largestDog) {
        onMetal();
        faults.unless(
                largestDog.filter(most -> !grip.diameter().isMoreThan(most)).isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "no driving dog here takes " + faults.size(grip.diameter()));
        faults.unless(
                !grip.length().isLessThan(Believable.LEAST_GRIP),
                Fault.Code.GRIP_TOO_SHORT,
                () -> "a dog does not hold on " + faults.size(grip.length()));
    }

    /** Soft jaws and split bushes are bored round, and bear on nothing with flats. */
    void round() {
        faults.unless(
                sides() == 0 && teeth().isEmpty(),
                Fault.Code.NO_HOLDER,
                () -> "soft jaws and split bushes are bored for round work, not for flats or teeth");
    }

    /** Bare jaws bear on no surface that is to size already. */
    void unmarked(Solid wanted) {
        faults.unless(
                !isFinished(wanted),
                Fault.Code.GRIP_MARKS,
                () -> "bare jaws would mark the finished surface of " + faults.size(grip.diameter()));
    }

    /** What is still to be threaded is not finished, though it is at its major diameter. */
    private boolean isFinished(Solid wanted) {
        Length atSize = Carving.within(wanted.outer(), span)
                .map(outside -> Level.of(outside, grip.diameter().half(), Deviation.ALLOWED))
                .orElse(Length.ZERO);
        Length threaded = wanted.threads().stream()
                .filter(thread -> !thread.inside())
                .flatMap(thread -> new Span(thread.from(), thread.to()).common(span).stream())
                .map(Span::length)
                .reduce(Length.ZERO, Length::plus);
        return atSize.minus(threaded).isMoreThan(Deviation.ALLOWED) || isOnFinishedFlats(wanted);
    }

    private boolean isOnFinishedFlats(Solid wanted) {
        return sides() > 0
                && wanted.flats().stream()
                        .anyMatch(flats -> flats.across().isWithin(Deviation.ALLOWED, grip.diameter())
                                && new Span(flats.from(), flats.to()).meets(span));
    }

    /** The wall under the jaws stands their push. */
    void wall(double least) {
        Length hollow = Carving.within(work.inner(), span)
                .map(inside -> inside.most(inside.start(), inside.end()))
                .orElse(Length.ZERO);
        Length wall = grip.diameter().half().minus(hollow);
        faults.unless(
                hollow.isZero() || wall.over(grip.diameter()) >= least,
                Fault.Code.GRIP_NIPS,
                () -> "a wall of " + faults.size(wall) + " under the jaws is pressed out of round");
    }

    private void onMetal() {
        boolean bears = work.span().holds(span, Deviation.ALLOWED)
                && (sides() > 0 || bearing().over(grip.length()) >= Believable.LEAST_BEARING);
        faults.unless(
                bears,
                Fault.Code.GRIP_ON_AIR,
                () -> "there is no metal of " + faults.size(grip.diameter()) + " all along from "
                        + faults.size(grip.from()) + " to " + faults.size(grip.to()));
        faults.unless(
                work.features().threads().stream()
                        .noneMatch(thread -> !thread.inside() && thread.over().meets(span)),
                Fault.Code.GRIP_SPOILS,
                () -> "a finished thread may not be gripped");
    }

    /** How much of the grip is at its diameter: a chamfered end may lie under the jaws, but nothing that stands prouder. */
    private Length bearing() {
        boolean proud = work.largest(span).isMoreThan(grip.diameter().plus(Believable.GRIPPED_NEAR));
        return proud
                ? Length.ZERO
                : Carving.within(work.outer(), span)
                        .map(outside -> Level.of(outside, grip.diameter().half(), Believable.GRIPPED_NEAR))
                        .orElse(Length.ZERO);
    }
}
