package chargehand.paper.stage;

import chargehand.drawing.stage.Surface;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.replay.TurnedWork;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The surfaces that a set-up's operations cut, each once, as far as they are still there when it is done. */
final class CutSurfaces {
    private final TurnedWork after;
    private final LengthUnit unit;

    CutSurfaces(TurnedWork after, LengthUnit unit) {
        this.after = after;
        this.unit = unit;
    }

    List<Surface> list(List<Operation> operations) {
        var surfaces = new ArrayList<Surface>();
        for (Operation operation : operations) {
            surface(operation.cut())
                    .filter(surface -> !surfaces.contains(surface))
                    .ifPresent(surfaces::add);
        }
        return surfaces;
    }

    private Optional<Surface> surface(Cut cut) {
        return switch (cut) {
            case Cut.FaceEnd face -> Optional.of(new Surface.Face(face.at(), ""));
            case Cut.CentreHole centre -> Optional.empty();
            case Cut.DrillAxial drill -> inside(face(drill.end()), drill.to(), "");
            case Cut.BoreTo bore -> inside(face(bore.end()), bore.to(), "");
            case Cut.ReamTo ream -> inside(face(ream.end()), ream.to(), "");
            case Cut.ConeInside cone -> inside(cone.at(), deep(cone), "");
            case Cut.TurnDiameter turn -> outside(turn.from(), turn.to(), "");
            case Cut.TurnTaper taper -> outside(taper.from(), taper.to(), "");
            case Cut.CutGroove groove -> outside(groove.from(), groove.to(), "");
            case Cut.FinishEdge edge -> Optional.empty();
            case Cut.PartOff off -> Optional.of(new Surface.Face(off.partSide() == End.A ? off.from() : off.to(), ""));
            case Cut.SawOff saw -> Optional.of(new Surface.Face(saw.to(), ""));
            case Cut.ThreadOutside thread ->
                outside(thread.from(), thread.to(), thread.thread().designation());
            case Cut.ThreadInside thread ->
                inside(face(thread.end()), thread.to(), thread.thread().designation());
            case Cut.MillFlats flats -> Optional.of(flats(flats));
            case Cut.DrillAcross hole ->
                Optional.of(new Surface.Feature(hole.at(), "Ø " + LengthText.in(hole.diameter(), unit)));
            case Cut.MillKeyway keyway ->
                Optional.of(new Surface.Feature(keyway.from(), LengthText.in(keyway.width(), unit) + " wide"));
            case Cut.SlotInBore slot -> inside(slot.from(), slot.to(), LengthText.in(slot.width(), unit) + " wide");
            case Cut.RecessInBore recess ->
                inside(recess.from(), recess.to(), "Ø " + LengthText.in(recess.diameter(), unit));
            case Cut.CutTeeth teeth -> outside(teeth.from(), teeth.to(), teeth.teeth() + " teeth");
            case Cut.DrillCircle holes ->
                Optional.of(new Surface.Face(
                        face(holes.end()), holes.count() + " × Ø " + LengthText.in(holes.diameter(), unit)));
            case Cut.MillFace face -> Optional.empty();
            case Cut.DrillHole hole -> Optional.empty();
            case Cut.ReamHole hole -> Optional.empty();
            case Cut.TapHole hole -> Optional.empty();
            case Cut.Deburr deburr -> Optional.empty();
        };
    }

    private Length face(End end) {
        return after.face(end);
    }

    /** Where a cone narrows to its small end. */
    private static Length deep(Cut.ConeInside cone) {
        double depth = cone.mouth().minus(cone.narrow()).half().mm()
                / cone.included().half().tan();
        return cone.end().other().from(cone.at(), Length.mm(depth));
    }

    private Surface flats(Cut.MillFlats flats) {
        String label = flats.sides() + " flats, " + LengthText.in(flats.flats(), unit) + " across";
        return new Surface.Flats(flats.from(), flats.to(), label);
    }

    private Optional<Surface> outside(Length one, Length other, String label) {
        return within(one, other).map(span -> new Surface.Outside(span.from(), span.to(), label));
    }

    private Optional<Surface> inside(Length one, Length other, String label) {
        return within(one, other).map(span -> new Surface.Inside(span.from(), span.to(), label));
    }

    private record Stretch(Length from, Length to) {}

    private Optional<Stretch> within(Length one, Length other) {
        Length from = Length.most(Length.least(one, other), after.outer().start());
        Length to = Length.least(Length.most(one, other), after.outer().end());
        return from.isLessThan(to) ? Optional.of(new Stretch(from, to)) : Optional.empty();
    }
}
