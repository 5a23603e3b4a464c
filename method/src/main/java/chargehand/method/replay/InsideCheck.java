package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.trade.thread.PipeGauge;
import chargehand.trade.thread.ScrewThread;

/** The trade's order along the axis: face, centre, drill, bore or ream; each finds what it needs. */
final class InsideCheck {
    /** How much of the bottom of a bore may be solid yet, for the bar to face off. */
    private static final Length BOTTOM_NEAR = Length.mm(0.5);

    private final TurnedWork work;
    private final Length partLength;
    private final FaultList faults;

    InsideCheck(TurnedWork work, Length partLength, FaultList faults) {
        this.work = work;
        this.partLength = partLength;
        this.faults = faults;
    }

    private boolean isFaced(End end) {
        return work.face(end).equals(end == End.A ? Length.ZERO : partLength);
    }

    private boolean isCentred(End end) {
        return work.features().centres().stream().anyMatch(centre -> centre.end() == end);
    }

    private void faced(End end) {
        faults.unless(isFaced(end), Fault.Code.NO_START, () -> "end " + end + " is not faced yet");
    }

    void centre(Cut.CentreHole cut) {
        faced(cut.end());
        faults.unless(
                !isCentred(cut.end()) && work.mouth(cut.end()).isZero(),
                Fault.Code.MADE_TWICE,
                () -> "end " + cut.end() + " has a centre or a hole already");
    }

    void drill(Cut.DrillAxial cut) {
        faced(cut.end());
        faults.unless(
                isCentred(cut.end()) || work.mouth(cut.end()).isPositive(),
                Fault.Code.NO_START,
                () -> "the drill has neither a centre nor a hole to start in");
        faults.unless(
                !cut.diameter().isMoreThan(Believable.MOST_WITHOUT_PILOT)
                        || work.mouth(cut.end()).isPositive(),
                Fault.Code.NO_START,
                () -> "a drill of " + faults.size(cut.diameter()) + " wants a smaller hole before it");
    }

    void bore(Cut.BoreTo cut) {
        var hollow = new Hollow(work, cut.end());
        boolean open = hollow.pilot(cut.to(), cut.diameter()).isPositive()
                && (hollow.comesOut(cut.to())
                        ? hollow.least(cut.to()).isPositive()
                        : hollow.reaches(cut.to(), BOTTOM_NEAR));
        faults.unless(
                open, Fault.Code.WRONG_HOLE, () -> "there is no hole to the bottom for the boring bar to open out");
    }

    void ream(Cut.ReamTo cut) {
        Length hole = new Hollow(work, cut.end()).least(cut.to());
        Length off = cut.diameter().minus(hole);
        faults.unless(
                off.isPositive() && !off.isMoreThan(Believable.MOST_REAMED),
                Fault.Code.WRONG_HOLE,
                () -> "a reamer of " + faults.size(cut.diameter()) + " cannot follow a hole of " + faults.size(hole));
    }

    void cone(Cut.ConeInside cut) {
        boolean opens = work.mouth(cut.end()).isPositive();
        boolean atFace = cut.at().equals(work.face(cut.end()));
        faults.unless(
                opens && atFace && cut.mouth().isMoreThan(work.mouth(cut.end())),
                Fault.Code.WRONG_HOLE,
                () -> "the cone needs a smaller hole in the face that it opens");
    }

    void tap(Cut.ThreadInside cut) {
        faults.unless(
                work.features().threads().stream()
                        .noneMatch(thread -> thread.inside()
                                && Span.between(work.face(cut.end()), cut.to())
                                        .filter(thread.over()::meets)
                                        .isPresent()),
                Fault.Code.MADE_TWICE,
                () -> "the hole is tapped already");
        var hollow = new Hollow(work, cut.end());
        Length hole = hollow.least(cut.to());
        ScrewThread thread = cut.thread();
        faults.unless(
                !hole.isMoreThan(thread.minorInternal().plus(Deviation.ALLOWED))
                        && !hole.isLessThan(leastHole(cut).minus(Deviation.ALLOWED)),
                Fault.Code.WRONG_HOLE,
                () -> thread + " wants a hole of " + faults.size(thread.minorInternal()) + ", not "
                        + faults.size(hole));
        faults.unless(
                hollow.comesOut(cut.to())
                        || !hollow.least(room(cut)).isLessThan(leastHole(cut).minus(Deviation.ALLOWED)),
                Fault.Code.WRONG_HOLE,
                () -> "the hole is not deep enough for the lead of the tap");
    }

    /** How far the hole must go so that the tap's lead runs out of what the part needs of the thread. */
    private Length room(Cut.ThreadInside cut) {
        Length within = cut.end() == End.A ? Length.least(cut.to(), partLength) : Length.most(cut.to(), Length.ZERO);
        return cut.end().other().from(within, cut.thread().pitch().length().times(Believable.LEAST_TAP_ROOM));
    }

    /** A taper thread may be cut in a hole as small as its small end. */
    private Length leastHole(Cut.ThreadInside cut) {
        Length fall = cut.thread().isTaper()
                ? cut.to().minus(work.face(cut.end())).abs().times(1 / PipeGauge.TAPER_ONE_IN)
                : Length.ZERO;
        return cut.thread().minorInternal().minus(fall);
    }
}
