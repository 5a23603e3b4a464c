package chargehand.method.replay;

import chargehand.method.plan.Cut;
import chargehand.part.End;
import java.util.Optional;

/** From where a cut is made. */
sealed interface CutPlace {
    /** Over a stretch of the outside, the tool standing beside the work. */
    record Beside(Span span) implements CutPlace {}

    /** Across the face of an end. */
    record AcrossEnd(End end) implements CutPlace {}

    /** Along the axis, into an end. */
    record Into(End end) implements CutPlace {}

    /** Nowhere in particular. */
    record Anywhere() implements CutPlace {}

    /** Nothing for a stretch that has no length. */
    static Optional<CutPlace> of(Cut cut) {
        return switch (cut) {
            case Cut.FaceEnd face -> Optional.of(new AcrossEnd(face.end()));
            case Cut.CentreHole centre -> Optional.of(new Into(centre.end()));
            case Cut.DrillAxial drill -> Optional.of(new Into(drill.end()));
            case Cut.BoreTo bore -> Optional.of(new Into(bore.end()));
            case Cut.ReamTo ream -> Optional.of(new Into(ream.end()));
            case Cut.SlotInBore slot -> Span.between(slot.from(), slot.to()).map(span -> new Into(slot.end()));
            case Cut.RecessInBore recess ->
                Span.between(recess.from(), recess.to()).map(span -> new Into(recess.end()));
            case Cut.ConeInside cone -> Optional.of(new Into(cone.end()));
            case Cut.ThreadInside thread -> Optional.of(new Into(thread.end()));
            case Cut.TurnDiameter turn -> beside(Span.between(turn.from(), turn.to()));
            case Cut.TurnTaper taper -> beside(Span.between(taper.from(), taper.to()));
            case Cut.CutGroove groove -> beside(Span.between(groove.from(), groove.to()));
            case Cut.FinishEdge edge -> edge(edge);
            case Cut.PartOff part -> beside(Span.between(part.from(), part.to()));
            case Cut.ThreadOutside thread -> beside(Span.between(thread.from(), thread.to()));
            case Cut.MillFlats flats -> beside(Span.between(flats.from(), flats.to()));
            case Cut.DrillAcross hole ->
                beside(Span.between(
                        hole.at().minus(hole.diameter().half()),
                        hole.at().plus(hole.diameter().half())));
            case Cut.MillKeyway keyway ->
                beside(Span.between(keyway.from(), keyway.from().plus(keyway.length())));
            case Cut.CutTeeth teeth -> beside(Span.between(teeth.from(), teeth.to()));
            case Cut.DrillCircle holes -> Optional.of(new Into(holes.end()));
            case Cut.SawOff saw -> Optional.of(new Anywhere());
            case Cut.MillFace face -> Optional.of(new Anywhere());
            case Cut.DrillHole hole -> Optional.of(new Anywhere());
            case Cut.ReamHole hole -> Optional.of(new Anywhere());
            case Cut.TapHole hole -> Optional.of(new Anywhere());
            case Cut.Deburr deburr -> Optional.of(new Anywhere());
        };
    }

    private static Optional<CutPlace> beside(Optional<Span> span) {
        return span.map(Beside::new);
    }

    private static Optional<CutPlace> edge(Cut.FinishEdge edge) {
        return edge.inside()
                ? Optional.of(new Into(edge.towards().other()))
                : beside(Span.between(edge.at(), edge.towards().from(edge.at(), EdgePath.reach(edge.form()))));
    }
}
