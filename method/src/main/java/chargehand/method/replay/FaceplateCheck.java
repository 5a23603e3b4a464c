package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.part.shape.Solid;

/** Whether turned work can be clamped against a lathe's faceplate as a holding says. */
final class FaceplateCheck {
    /** The least that a clamp laps over a face (common practice). */
    private static final Length LEAST_LAP = Length.mm(8);

    /** The least that a patient hand dials work on a faceplate to. */
    private static final Length DIALLED = Length.mm(0.01);

    private final TurnedWork work;
    private final Solid wanted;
    private final Lathe lathe;
    private final FaultList faults;

    FaceplateCheck(TurnedWork work, Solid wanted, Lathe lathe, FaultList faults) {
        this.work = work;
        this.wanted = wanted;
        this.lathe = lathe;
        this.faults = faults;
    }

    void check(Holding.OnFaceplate held) {
        Length largest = work.largest(work.span());
        faults.unless(
                lathe.holders()
                        .faceplate()
                        .filter(plate -> !largest.isMoreThan(plate))
                        .isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "the " + lathe.name() + " has no faceplate for work of " + faults.size(largest));
        faults.unless(
                !largest.isMoreThan(lathe.room().overSlide()),
                Fault.Code.TOO_BIG,
                () -> "the work does not swing over the slide of the " + lathe.name());
        faults.unless(
                !held.runOut().isLessThan(DIALLED),
                Fault.Code.NOT_TRUE,
                () -> "work on a faceplate is not dialled truer than " + faults.size(DIALLED));
        End back = held.headstock();
        Length flat = back == End.A ? Length.ZERO : wanted.length();
        faults.unless(
                !work.onBar() && work.face(back).equals(flat),
                Fault.Code.GRIP_ON_AIR,
                () -> "end " + back + " is not faced yet, and does not lie flat on the plate");
        clamps(held);
    }

    private void clamps(Holding.OnFaceplate held) {
        End free = held.headstock().other();
        boolean atEnd = held.clamped().equals(work.face(free));
        Length outside = beside(held.clamped(), free);
        Length inside = atEnd ? Length.most(work.mouth(free), wantedMouth(free)) : beyond(held.clamped(), free);
        faults.unless(
                atEnd == held.rim() && !held.within().isLessThan(inside.minus(Deviation.ALLOWED)),
                Fault.Code.GRIP_ON_AIR,
                () -> "there is no face at " + faults.size(held.clamped()) + " outside a diameter of "
                        + faults.size(held.within()) + " for clamps to stand on");
        faults.unless(
                !outside.minus(held.within()).half().isLessThan(LEAST_LAP),
                Fault.Code.GRIP_TOO_SHORT,
                () -> "clamps lap over too little from " + faults.size(held.within()) + " to " + faults.size(outside));
    }

    /** The diameter on the headstock's side of a position; 0 where there is no metal. */
    private Length beside(Length at, End free) {
        if (!isWithin(at, free.other())) {
            return Length.ZERO;
        }
        return (free == End.B ? work.outer().radiusBefore(at) : work.outer().radiusAfter(at)).times(2);
    }

    /** The largest diameter from a position to the free end. */
    private Length beyond(Length at, End free) {
        return Span.between(at, work.face(free)).map(work::largest).orElse(Length.ZERO);
    }

    /** Whether metal goes on from a position towards an end. */
    private boolean isWithin(Length at, End towards) {
        return towards.distance(at, work.face(towards)).isPositive()
                && !towards.other().distance(at, work.face(towards.other())).isNegative();
    }

    private Length wantedMouth(End free) {
        return (free == End.A
                        ? wanted.inner().radiusAfter(wanted.inner().start())
                        : wanted.inner().radiusBefore(wanted.inner().end()))
                .times(2);
    }
}
