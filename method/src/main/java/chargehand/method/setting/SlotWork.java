package chargehand.method.setting;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Settings;
import chargehand.method.task.Bores;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.Size;
import chargehand.trade.sum.Source;
import java.util.List;
import java.util.Locale;

/**
 * Writes what is cut into the wall of a bore on one lathe: keyways and oil grooves planed with the saddle while the spindle
 * stands, recesses with an inside grooving tool.
 */
final class SlotWork {
    /** What a bit on its side takes in one stroke by hand (common practice). */
    private static final Length STROKE_MM = Length.mm(0.05);

    private static final Length STROKE_IN = Length.thou(2);

    /** What a stroke out and back takes, racked by hand. */
    private static final double STROKE_MINUTES = 0.1;

    /** Locking the spindle, setting the bit square to its angle and to centre height. */
    private static final double SETTING_MINUTES = 5;

    private final Making making;
    private final Lathe lathe;
    private final Gauges gauges;
    private final InnerTools tools;

    SlotWork(Making making, Lathe lathe) {
        this.making = making;
        this.lathe = lathe;
        this.gauges = new Gauges(making.kit().tooling());
        this.tools = new InnerTools(making.kit().tooling(), making.body());
    }

    Draft cut(InBore inBore, End end) {
        return switch (inBore) {
            case InBore.Keyway keyway ->
                slot(new Slot(keyway, keyway.width(), keyway.depth(), Cut.SlotForm.SQUARE), end, keyway.around());
            case InBore.OilGroove groove ->
                slot(new Slot(groove, groove.width(), groove.depth(), Cut.SlotForm.ROUND), end, groove.around());
            case InBore.Recess recess -> recess(recess, end);
        };
    }

    /** A slot, flat or round at the bottom. */
    private record Slot(InBore feature, Size width, Size depth, Cut.SlotForm form) {
        /** How far the wall of a bore falls away from the middle of the slot to its edges: where a flat bit touches first. */
        Length hollow(Length bore) {
            double half = form == Cut.SlotForm.SQUARE ? width.length().half().mm() : 0;
            double radius = bore.half().mm();
            return Length.mm(radius - Math.sqrt(radius * radius - half * half));
        }
    }

    private String size(Length length) {
        return LengthText.both(length, lathe.unit());
    }

    private Draft slot(Slot slot, End end, Angle around) {
        Length bore = Bores.diameter(tools.bore(slot.feature()));
        InnerTools.Stretch over = tools.stretch(slot.feature());
        Length width = slot.width().length();
        Length depth = slot.depth().length();
        Length bottom = bore.plus(depth.times(2));
        Length touched = bore.minus(slot.hollow(bore).times(2));
        Length stroke = lathe.unit() == LengthUnit.INCH ? STROKE_IN : STROKE_MM;
        int strokes = (int) Math.ceil(bottom.minus(touched).half().over(stroke));
        String bit = tools.slotting(slot.feature(), end)
                        .map(LatheTool.Slotting::name)
                        .orElse("slotting bar") + ", bit ground to " + LengthText.in(width, lathe.unit());
        var cut = new Cut.SlotInBore(end, over.from(), over.to(), bore, width, depth, around, slot.form());
        var draft = new Draft(say(slot, strokes, stroke), cut, bit, lathe.unit());
        Length dial = lathe.slides().cross().nearest(lathe.slides().crossReading(bottom.minus(touched)));
        draft.passes(List.of(new Settings.Pass(1, dial, bore.plus(depth))));
        draft.working()
                .step(
                        "The bit touches first at its corners, below the top of the bore, and goes in from there",
                        "c = d/2 − √((d/2)² − (b/2)²), in all c + t",
                        String.format(
                                Locale.ROOT,
                                "%.3f mm + %.3f mm",
                                slot.hollow(bore).mm(),
                                depth.mm()),
                        size(bottom.minus(touched).half()),
                        Source.GEOMETRY);
        draft.caution("Spindle locked and the drive isolated: nothing may start while your hand is at the work.");
        draft.caution(
                "The tool draws in if it is above or below centre; let it rub back clear at every return stroke.");
        if (!isPart(slot)) {
            draft.caution(
                    "The bit must run out behind the work: try one stroke by hand, clear of chuck and jaws, before it cuts.");
        }
        read(draft, slot, bore);
        return draft.takes(SETTING_MINUTES + strokes * STROKE_MINUTES);
    }

    private String say(Slot slot, int strokes, Length stroke) {
        String what = slot.form() == Cut.SlotForm.SQUARE ? "Plane the keyway " : "Plane the oil groove ";
        return what + size(slot.width().length()) + " wide, "
                + size(slot.depth().length())
                + " deep from the wall, spindle locked: saddle to and fro, about " + strokes + " strokes of "
                + LengthText.in(stroke, lathe.unit()) + where(slot);
    }

    /** What is seen to before the first stroke: the old keyway is brought to the bit, a groove that ends in the bore is eased. */
    private String where(Slot slot) {
        return switch (slot.feature()) {
            case InBore.Keyway keyway ->
                isOverAnOldOne(keyway) ? "; turn what is left of the old keyway to the bit first" : "";
            case InBore.OilGroove groove -> isPart(slot) ? ", eased in and out at its ends" : "";
            case InBore.Recess recess -> "";
        };
    }

    private static boolean isPart(Slot slot) {
        return slot.feature() instanceof InBore.OilGroove groove && groove.run() instanceof InBore.Run.Part;
    }

    private boolean isOverAnOldOne(InBore.Keyway keyway) {
        return making.body().inBores().stream()
                .anyMatch(other -> other instanceof InBore.Keyway old
                        && old.isThere()
                        && old.around().equals(keyway.around()));
    }

    /** A keyway is read from the wall over against it, since its own depth cannot be: d + t₂. */
    private void read(Draft draft, Slot slot, Length bore) {
        Limits depth = making.limits(slot.depth());
        var across = new Limits(bore.plus(depth.least()), bore.plus(depth.most()));
        draft.reading(gauges.inside("from the wall opposite to the bottom, d + t", across));
        if (slot.form() == Cut.SlotForm.SQUARE) {
            draft.reading(gauges.inside("width, and the key tried in it", making.limits(slot.width())));
            draft.hold();
        }
    }

    private Draft recess(InBore.Recess recess, End end) {
        Length bore = Bores.diameter(tools.bore(recess));
        InnerTools.Stretch over = tools.stretch(recess);
        Length bottom = recess.diameter().length();
        String tool =
                tools.grooving(recess, end).map(LatheTool.InsideGrooving::name).orElse("inside grooving tool");
        String say = "Groove the bore " + size(over.length()) + " wide to Ø " + size(bottom);
        var draft = new Draft(say, new Cut.RecessInBore(end, over.from(), over.to(), bottom), tool, lathe.unit());
        SpindleSpeed speed = Spindle.pick(lathe.speeds(), bottom, CutKind.GROOVING, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        Length dial = lathe.slides().cross().nearest(lathe.slides().crossReading(bottom.minus(bore)));
        draft.passes(List.of(new Settings.Pass(1, dial, bottom)));
        draft.reading(gauges.inside("Ø of " + recess.name(), making.limits(recess.diameter())));
        return draft.takes(OperationTimes.HAND_FEED_MINUTES
                + OperationTimes.feeding(bottom.minus(bore).half(), Length.mm(0.04), speed));
    }
}
