package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import java.util.Optional;

/** What is cut into the wall of a bore: the bore is to size before it, the tool runs out, and a wall stays. */
final class InWallCheck {
    private final TurnedWork work;
    private final FaultList faults;

    InWallCheck(TurnedWork work, FaultList faults) {
        this.work = work;
        this.faults = faults;
    }

    void slot(Cut.SlotInBore cut) {
        faults.unless(
                work.features().slots().stream().noneMatch(cut::equals),
                Fault.Code.MADE_TWICE,
                () -> "that slot is there already");
        Optional<Span> over = Span.between(cut.from(), cut.to());
        faults.unless(
                over.filter(span -> isToSize(span, cut.bore())).isPresent(),
                Fault.Code.WRONG_HOLE,
                () -> "the slot is cut in a bore of " + faults.size(cut.bore())
                        + ", and the hole there is not that size");
        faults.unless(
                cut.form() == Cut.SlotForm.ROUND || runsOut(cut),
                Fault.Code.WRONG_HOLE,
                () -> "the tool for a keyway has nowhere to run out");
        over.ifPresent(span -> wall(span, cut.bore().half().plus(cut.depth())));
    }

    void recess(Cut.RecessInBore cut) {
        Length hole = new Hollow(work, cut.end()).least(cut.end() == End.A ? cut.to() : cut.from());
        faults.unless(
                hole.isPositive() && hole.isLessThan(cut.diameter()),
                Fault.Code.WRONG_HOLE,
                () -> "there is no smaller bore in which to cut a groove of " + faults.size(cut.diameter()));
    }

    private boolean isToSize(Span over, Length bore) {
        return work.span().holds(over, Deviation.ALLOWED)
                && Carving.within(work.inner(), over)
                        .map(hollow ->
                                hollow.least(hollow.start(), hollow.end()).times(2))
                        .filter(least -> least.isWithin(Deviation.ALLOWED, bore))
                        .isPresent();
    }

    /** The far end of the stroke is open: the other face, or a part of the hollow as wide as the slot is deep. */
    private boolean runsOut(Cut.SlotInBore cut) {
        return switch (cut.end()) {
            case A -> !cut.to().isLessThan(work.span().to().minus(Deviation.ALLOWED));
            case B -> !cut.from().isMoreThan(work.span().from().plus(Deviation.ALLOWED));
        };
    }

    private void wall(Span over, Length bottom) {
        boolean stays = Carving.within(work.solid().outerAtLeast(), over)
                .map(outside -> outside.least(outside.start(), outside.end()).minus(bottom))
                .filter(wall -> !wall.isLessThan(Believable.LEAST_WALL))
                .isPresent();
        faults.unless(stays, Fault.Code.WALL_TOO_THIN, () -> "the slot leaves no wall behind it");
    }
}
