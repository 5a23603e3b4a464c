package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Operations that leave another size, their last pass and its dial reading with it. */
final class Resized {
    private Resized() {}

    /** Nothing for a cut that has no size of its own that shows in the part. */
    static Optional<Operation> by(Operation operation, Length by) {
        return cut(operation.cut(), by).map(cut -> Steps.with(Steps.with(operation, cut), passes(operation, by)));
    }

    private static Optional<Cut> cut(Cut cut, Length by) {
        return Optional.ofNullable(
                switch (cut) {
                    case Cut.TurnDiameter c ->
                        new Cut.TurnDiameter(c.from(), c.to(), c.diameter().plus(by));
                    case Cut.TurnTaper c ->
                        new Cut.TurnTaper(
                                c.from(), c.to(), c.atFrom().plus(by), c.atTo().plus(by), c.way());
                    case Cut.CutGroove c ->
                        new Cut.CutGroove(c.from(), c.to(), c.diameter().plus(by));
                    case Cut.BoreTo c -> new Cut.BoreTo(c.end(), c.diameter().plus(by), c.to());
                    case Cut.ReamTo c -> new Cut.ReamTo(c.end(), c.diameter().plus(by), c.to());
                    case Cut.MillFlats c ->
                        new Cut.MillFlats(c.sides(), c.flats().plus(by), c.from(), c.to());
                    case Cut.SlotInBore c ->
                        new Cut.SlotInBore(
                                c.end(),
                                c.from(),
                                c.to(),
                                c.bore(),
                                c.width(),
                                c.depth().plus(by),
                                c.around(),
                                c.form());
                    case Cut.RecessInBore c ->
                        new Cut.RecessInBore(
                                c.end(), c.from(), c.to(), c.diameter().plus(by));
                    case Cut.MillFace c -> new Cut.MillFace(c.face(), c.to().plus(by));
                    case Cut.DrillHole c ->
                        new Cut.DrillHole(c.x(), c.y(), c.diameter().plus(by), c.through(), c.depth());
                    case Cut.DrillAcross c ->
                        new Cut.DrillAcross(c.at(), c.diameter().plus(by), c.around(), c.through(), c.depth());
                    case Cut.MillKeyway c ->
                        new Cut.MillKeyway(
                                c.from(), c.length(), c.width(), c.depth().plus(by), c.around());
                    case Cut.ConeInside c ->
                        new Cut.ConeInside(c.end(), c.at(), c.mouth().plus(by), c.included(), c.narrow());
                    case Cut.FaceEnd c -> new Cut.FaceEnd(c.end(), c.at().plus(by));
                    case Cut.CutTeeth c ->
                        new Cut.CutTeeth(c.teeth(), c.pitchDiameter(), c.root().plus(by), c.from(), c.to());
                    case Cut.DrillCircle c ->
                        new Cut.DrillCircle(
                                c.end(),
                                c.count(),
                                c.circle(),
                                c.around(),
                                c.diameter().plus(by),
                                c.through(),
                                c.depth());
                    case Cut.FinishEdge c -> null;
                    case Cut.CentreHole c -> null;
                    case Cut.DrillAxial c -> null;
                    case Cut.PartOff c -> null;
                    case Cut.SawOff c -> null;
                    case Cut.ThreadOutside c -> null;
                    case Cut.ThreadInside c -> null;
                    case Cut.ReamHole c -> null;
                    case Cut.TapHole c -> null;
                    case Cut.Deburr c -> null;
                });
    }

    private static Settings passes(Operation operation, Length by) {
        Settings settings = operation.settings();
        if (settings.passes().isEmpty()) {
            return settings;
        }
        List<Settings.Pass> passes = new ArrayList<>(settings.passes());
        Settings.Pass last = passes.removeLast();
        boolean opens = operation.cut() instanceof Cut.BoreTo;
        Length reads = opens ? by : by.negated();
        passes.add(new Settings.Pass(
                last.number(), last.dial().plus(reads), last.leaves().plus(by)));
        return SettingsEdits.with(settings, passes);
    }
}
