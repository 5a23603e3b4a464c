package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import java.util.Optional;

/** Cuts made a little to one side of where they belong. */
final class Shifted {
    private Shifted() {}

    /** Nothing for a cut whose place does not show in the part. */
    static Optional<Cut> by(Cut cut, Length by) {
        return Optional.ofNullable(
                switch (cut) {
                    case Cut.CutGroove c -> new Cut.CutGroove(c.from().plus(by), c.to().plus(by), c.diameter());
                    case Cut.TurnTaper c ->
                        new Cut.TurnTaper(c.from().plus(by), c.to().plus(by), c.atFrom(), c.atTo(), c.way());
                    case Cut.FinishEdge c ->
                        new Cut.FinishEdge(c.at().plus(by), c.diameter(), c.towards(), c.inside(), c.form());
                    case Cut.ThreadOutside c ->
                        new Cut.ThreadOutside(c.thread(), c.from().plus(by), c.to().plus(by), c.way());
                    case Cut.MillFlats c ->
                        new Cut.MillFlats(c.sides(), c.flats(), c.from().plus(by), c.to().plus(by));
                    case Cut.DrillAcross c ->
                        new Cut.DrillAcross(c.at().plus(by), c.diameter(), c.around(), c.through(), c.depth());
                    case Cut.MillKeyway c ->
                        new Cut.MillKeyway(c.from().plus(by), c.length(), c.width(), c.depth(), c.around());
                    case Cut.RecessInBore c ->
                        new Cut.RecessInBore(c.end(), c.from().plus(by), c.to().plus(by), c.diameter());
                    case Cut.SlotInBore c -> null;
                    case Cut.DrillHole c ->
                        new Cut.DrillHole(c.x().plus(by), c.y(), c.diameter(), c.through(), c.depth());
                    case Cut.ConeInside c ->
                        new Cut.ConeInside(c.end(), c.at().plus(by), c.mouth(), c.included(), c.narrow());
                    case Cut.CutTeeth c ->
                        new Cut.CutTeeth(
                                c.teeth(), c.pitchDiameter(), c.root(), c.from().plus(by), c.to().plus(by));
                    case Cut.DrillCircle c ->
                        new Cut.DrillCircle(
                                c.end(),
                                c.count(),
                                c.circle().plus(by),
                                c.around(),
                                c.diameter(),
                                c.through(),
                                c.depth());
                    case Cut.TurnDiameter c -> null;
                    case Cut.FaceEnd c -> null;
                    case Cut.BoreTo c -> null;
                    case Cut.ReamTo c -> null;
                    case Cut.MillFace c -> null;
                    case Cut.CentreHole c -> null;
                    case Cut.DrillAxial c -> null;
                    case Cut.PartOff c -> null;
                    case Cut.SawOff c -> null;
                    case Cut.ThreadInside c -> null;
                    case Cut.ReamHole c -> null;
                    case Cut.TapHole c -> null;
                    case Cut.Deburr c -> null;
                });
    }
}
