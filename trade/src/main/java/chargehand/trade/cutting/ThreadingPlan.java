package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.cutting.CutSettings.Load;
import chargehand.trade.cutting.CutSettings.Spindle;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Optional;

/** Screw-cutting with a single-point tool: passes of equal area, so that none loads the tool more than another. */
final class ThreadingPlan {
    /** Depth of a thread over its pitch where none is given: that of the ISO metric thread, 17√3/48. */
    private static final double ISO_DEPTH = 17 * Math.sqrt(3) / 48;

    /** Half the flank angle's tangent for a thread of 60°: what makes width of groove from depth. */
    private static final double FLANK = Math.tan(Math.toRadians(30));

    private static final double DEEPEST = 1.2;

    private final Cut cut;
    private final Working working;

    ThreadingPlan(Cut cut, Working working) {
        this.cut = cut;
        this.working = working;
    }

    CutSettings settings() {
        Length pitch = cut.pitch()
                .orElseThrow(() -> new CannotCut("pitch", "a thread needs its pitch: 1.5 mm or 14 tpi."))
                .length();
        Spindle spindle = new SpindleChoice(cut, working).choose();
        Length depth = cut.depth().orElseGet(() -> isoDepth(pitch));
        if (depth.isMoreThan(pitch.times(DEEPEST))
                || !depth.isLessThan(cut.diameter().half())) {
            throw new CannotCut("depth", "no thread is as deep as this for its pitch and diameter.");
        }
        List<Length> steps = Passes.groove(depth, cut.practice().depthRough());
        working.step(
                "Passes of equal area, the first about " + said(steps.getFirst()),
                "depth after pass i = h √(i / passes)",
                said(depth) + " × √(1 / " + steps.size() + ")",
                steps.size() + " passes",
                Source.COMMON_PRACTICE);
        working.caution(
                "In screw-cutting carriage and chuck are geared together: set the stop or leave a runout, and take"
                        + " the slowest speed until the passes are sure.");
        return new CutSettings(
                spindle,
                pitch,
                Rotation.feedRate(pitch, spindle.rpm()),
                steps,
                load(spindle, depth, steps.size()),
                cut.length()
                        .map(length ->
                                CutTime.of(length.plus(CutPlan.RUN_IN), pitch, spindle.rpm(), steps.size(), working)),
                Optional.empty(),
                SpindleChoice.limit(spindle, cut));
    }

    private Length isoDepth(Length pitch) {
        Length depth = pitch.times(ISO_DEPTH);
        working.step(
                "Depth of thread, where none is given that of the ISO metric thread",
                "h = 0.6134 P",
                "0.6134 × " + said(pitch),
                said(depth),
                Source.memory("ISO 68-1"));
        return depth;
    }

    /** Each pass takes its share of the groove's area along both flanks. */
    private Optional<Load> load(Spindle spindle, Length depth, int passes) {
        return cut.material().kienzle().map(law -> {
            double area = depth.mm() * depth.mm() * FLANK / passes;
            double flanks = 2 * depth.mm() / Math.cos(Math.toRadians(30));
            var chip = new Chip(Length.mm(area / flanks), Length.mm(flanks));
            Drive.specificForce(law, chip.thickness(), working);
            Force force = chip.force(law);
            working.step(
                    "Force along the cut in the last passes",
                    "Fc = kc × area of one pass",
                    Figures.four(law.specificForce(chip.thickness()).megapascals()) + " × " + Figures.four(area)
                            + " mm²",
                    Figures.four(force.newtons()) + " N",
                    law.source());
            return Drive.load(force, cut.diameter(), spindle, working);
        });
    }

    private static String said(Length length) {
        return LengthText.mm(length, LengthText.MICROMETRE);
    }
}
