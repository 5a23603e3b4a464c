package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import java.util.Optional;

/** Whether one cut can be made on turned work as it stands, held as it is: the way in, and what must be there first. */
final class CutCheck {
    private final Access access;
    private final InsideCheck inside;
    private final InWallCheck inWall;
    private final OutsideCheck outside;
    private final MilledCheck milled;
    private final FaultList faults;

    CutCheck(TurnedWork work, Holding holding, Length partLength, FaultList faults) {
        this.access = Access.of(holding);
        this.inside = new InsideCheck(work, partLength, faults);
        this.inWall = new InWallCheck(work, faults);
        this.outside = new OutsideCheck(work, holding, faults);
        this.milled = new MilledCheck(work, holding, faults);
        this.faults = faults;
    }

    void check(Cut cut) {
        Optional<CutPlace> place = CutPlace.of(cut);
        faults.unless(place.isPresent(), Fault.Code.NOTHING_TO_CUT, () -> "the cut has no length");
        place.ifPresent(this::reach);
        first(cut);
    }

    private void reach(CutPlace place) {
        switch (place) {
            case CutPlace.Beside(Span span) ->
                access.inTheWayOf(span)
                        .ifPresent(obstacle ->
                                faults.add(Fault.Code.TOOL_FOULS, "the tool would run into the " + obstacle.name()));
            case CutPlace.AcrossEnd(var end) ->
                faults.unless(
                        access.facing().contains(end),
                        Fault.Code.WRONG_SIDE,
                        () -> "end " + end + " cannot be faced while it is held or supported there");
            case CutPlace.Into(var end) ->
                faults.unless(
                        access.axial().contains(end),
                        Fault.Code.WRONG_SIDE,
                        () -> "no tool can go into end " + end + " while it is held or supported there");
            case CutPlace.Anywhere() -> {}
        }
    }

    private void first(Cut cut) {
        switch (cut) {
            case Cut.CentreHole centre -> inside.centre(centre);
            case Cut.DrillAxial drill -> inside.drill(drill);
            case Cut.BoreTo bore -> inside.bore(bore);
            case Cut.ReamTo ream -> inside.ream(ream);
            case Cut.ConeInside cone -> inside.cone(cone);
            case Cut.ThreadInside thread -> inside.tap(thread);
            case Cut.SlotInBore slot -> inWall.slot(slot);
            case Cut.RecessInBore recess -> inWall.recess(recess);
            case Cut.FaceEnd face -> outside.face(face);
            case Cut.TurnDiameter turn -> outside.turn(turn.from(), turn.to());
            case Cut.TurnTaper taper -> outside.turn(taper.from(), taper.to());
            case Cut.CutGroove groove -> outside.turn(groove.from(), groove.to());
            case Cut.FinishEdge edge -> outside.edge(edge);
            case Cut.PartOff part -> outside.part(part);
            case Cut.ThreadOutside thread -> outside.thread(thread);
            case Cut.MillFlats flats -> outside.flats(flats);
            case Cut.DrillAcross hole -> outside.hole(hole);
            case Cut.MillKeyway keyway -> outside.keyway(keyway);
            case Cut.CutTeeth teeth -> milled.teeth(teeth);
            case Cut.DrillCircle holes -> milled.circle(holes);
            case Cut.SawOff saw -> {}
            case Cut.Deburr deburr -> {}
            case Cut.MillFace face -> notTurned();
            case Cut.DrillHole hole -> notTurned();
            case Cut.ReamHole hole -> notTurned();
            case Cut.TapHole hole -> notTurned();
        }
    }

    private void notTurned() {
        faults.add(Fault.Code.WRONG_SIDE, "turned work has no such face");
    }
}
