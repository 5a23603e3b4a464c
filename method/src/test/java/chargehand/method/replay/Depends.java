package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import java.util.Optional;

/** Which cuts must come before which, and which can be left out without harm: common practice, told apart by hand. */
final class Depends {
    private Depends() {}

    /** Whether a cut must come after the one before it. */
    static boolean follows(Cut later, Cut earlier) {
        return switch (later) {
            case Cut.CentreHole centre -> earlier instanceof Cut.FaceEnd;
            case Cut.DrillAxial drill -> earlier instanceof Cut.CentreHole;
            case Cut.BoreTo bore -> earlier instanceof Cut.DrillAxial;
            case Cut.ReamTo ream -> earlier instanceof Cut.DrillAxial;
            case Cut.ThreadInside thread -> earlier instanceof Cut.DrillAxial;
            case Cut.TurnDiameter turn -> earlier instanceof Cut.TurnDiameter && overlap(later, earlier);
            case Cut.TurnTaper taper -> earlier instanceof Cut.FinishEdge && overlap(later, earlier);
            case Cut.FinishEdge edge ->
                (earlier instanceof Cut.TurnDiameter || earlier instanceof Cut.CutGroove) && overlap(later, earlier);
            case Cut.ThreadOutside thread -> !(earlier instanceof Cut.ThreadOutside) && overlap(later, earlier);
            case Cut.Deburr deburr -> true;
            case Cut.PartOff part -> true;
            case Cut.ReamHole hole -> earlier instanceof Cut.DrillHole;
            case Cut.TapHole hole -> earlier instanceof Cut.DrillHole;
            case Cut.CutTeeth teeth -> earlier instanceof Cut.TurnDiameter && overlap(later, earlier);
            case Cut.DrillCircle holes -> false;
            case Cut.FaceEnd face -> false;
            case Cut.ConeInside cone -> false;
            case Cut.CutGroove groove -> false;
            case Cut.SawOff saw -> false;
            case Cut.MillFlats flats -> false;
            case Cut.DrillAcross hole -> false;
            case Cut.MillKeyway keyway -> false;
            case Cut.SlotInBore slot -> earlier instanceof Cut.BoreTo;
            case Cut.RecessInBore recess -> earlier instanceof Cut.BoreTo;
            case Cut.MillFace face -> false;
            case Cut.DrillHole hole -> false;
        };
    }

    private static boolean overlap(Cut one, Cut other) {
        Optional<Span> first = beside(one);
        return first.flatMap(span -> beside(other).filter(span::meets)).isPresent();
    }

    private static Optional<Span> beside(Cut cut) {
        return CutPlace.of(cut)
                .filter(CutPlace.Beside.class::isInstance)
                .map(place -> ((CutPlace.Beside) place).span());
    }

    /** A step that only makes the next one lighter: a pilot before a larger drill, a cylinder before its own taper. */
    static boolean isSpare(Sites.Site site) {
        return site.number() < site.last()
                && switch (site.cut()) {
                    case Cut.DrillAxial drill ->
                        site.next() instanceof Cut.DrillAxial next
                                && !next.diameter().isMoreThan(Length.mm(20));
                    case Cut.TurnDiameter turn -> isRoughedForTaper(turn, site);
                    default -> false;
                };
    }

    private static boolean isRoughedForTaper(Cut.TurnDiameter turn, Sites.Site site) {
        return site.operations().stream()
                .map(Operation::cut)
                .anyMatch(cut -> cut instanceof Cut.TurnTaper taper
                        && taper.from().equals(turn.from())
                        && taper.to().equals(turn.to()));
    }

    /** Whether a reamer goes through a hole of a block later. */
    static boolean isReamed(Cut cut, Cut later) {
        return cut instanceof Cut.DrillHole drill
                && later instanceof Cut.ReamHole ream
                && drill.x().equals(ream.x())
                && drill.y().equals(ream.y());
    }
}
