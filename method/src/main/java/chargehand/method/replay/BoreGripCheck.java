package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.Optional;

/** Whether turned work can be held by a bore in which jaws open, coming in from the headstock's side. */
final class BoreGripCheck {
    private final TurnedWork work;
    private final Holding.Grip grip;
    private final End headstock;
    private final FaultList faults;
    private final Span span;

    BoreGripCheck(TurnedWork work, Holding.Grip grip, End headstock, FaultList faults) {
        this.work = work;
        this.grip = grip;
        this.headstock = headstock;
        this.faults = faults;
        this.span = new Span(grip.from(), grip.to());
    }

    void jaws(Chuck chuck) {
        faults.unless(
                chuck.gripsInside(grip.diameter()),
                Fault.Code.NO_HOLDER,
                () -> "the jaws of the " + chuck.name() + " do not open in a bore of " + faults.size(grip.diameter()));
        onMetal();
        length(chuck);
        wayIn();
        wall();
    }

    private void onMetal() {
        boolean bears = work.span().holds(span, Deviation.ALLOWED)
                && Carving.within(work.inner(), span)
                        .filter(bore -> !isProud(bore))
                        .map(this::level)
                        .filter(level -> level.over(grip.length()) >= Believable.LEAST_BEARING)
                        .isPresent();
        faults.unless(
                bears,
                Fault.Code.GRIP_ON_AIR,
                () -> "there is no bore of " + faults.size(grip.diameter()) + " all along from "
                        + faults.size(grip.from()) + " to " + faults.size(grip.to()));
        faults.unless(
                work.features().threads().stream()
                        .noneMatch(thread -> thread.inside() && thread.over().meets(span)),
                Fault.Code.GRIP_SPOILS,
                () -> "a finished thread may not be gripped");
    }

    private Length level(Profile bore) {
        return Level.of(bore, grip.diameter().half(), Believable.GRIPPED_NEAR);
    }

    /** Whether metal stands within the diameter that the jaws bear on. */
    private boolean isProud(Profile bore) {
        Length least = bore.least(bore.start(), bore.end()).times(2);
        return least.isLessThan(grip.diameter().minus(Believable.GRIPPED_NEAR));
    }

    private void length(Chuck chuck) {
        Length overhang = work.span().length().minus(grip.length());
        faults.unless(
                !grip.length()
                        .isLessThan(Believable.leastGrip(grip.diameter(), overhang, false)
                                .minus(Deviation.ALLOWED)),
                Fault.Code.GRIP_TOO_SHORT,
                () -> "a grip of " + faults.size(grip.length()) + " in a bore of " + faults.size(grip.diameter())
                        + " does not hold work that stands out " + faults.size(overhang));
        faults.unless(
                !grip.length().isMoreThan(chuck.jawLength().plus(Deviation.ALLOWED)),
                Fault.Code.GRIP_TOO_LONG,
                () -> "the jaws bear on no more than " + faults.size(chuck.jawLength()));
    }

    /** Jaws come in from the headstock's end: nothing on the way is narrower than where they bear. */
    private void wayIn() {
        boolean open = Span.between(work.face(headstock), span.border(headstock))
                .flatMap(way -> Carving.within(work.inner(), way))
                .filter(this::isProud)
                .isEmpty();
        faults.unless(
                open, Fault.Code.BLOCKED_BEHIND, () -> "the jaws cannot come in to that bore from end " + headstock);
    }

    void wall() {
        Optional<Length> wall = Carving.within(work.outer(), span)
                .map(outside -> outside.least(outside.start(), outside.end())
                        .minus(grip.diameter().half()));
        faults.unless(
                wall.filter(each -> each.over(grip.diameter()) < Believable.LEAST_WALL_IN_HARD_JAWS)
                        .isEmpty(),
                Fault.Code.GRIP_NIPS,
                () -> "the wall round the jaws is pressed out of round");
    }

    /** Bare jaws bear on no bore that is to size already. */
    void unmarked(Solid wanted) {
        boolean finished = Carving.within(wanted.inner(), span)
                .map(bore -> Level.of(bore, grip.diameter().half(), Deviation.ALLOWED))
                .filter(Length::isPositive)
                .isPresent();
        faults.unless(
                !finished,
                Fault.Code.GRIP_MARKS,
                () -> "bare jaws would mark the finished bore of " + faults.size(grip.diameter()));
    }
}
