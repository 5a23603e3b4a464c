package chargehand.trade.screwcutting;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.trade.material.Material;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/** Writes down how the cutting of a thread was planned. */
final class ScrewCutSteps {
    private static final int ANGLE_DECIMALS = 2;

    private final ScrewThread thread;
    private final LengthUnit unit;
    private final Working working;

    ScrewCutSteps(ScrewThread thread, LengthUnit unit, Working working) {
        this.thread = thread;
        this.unit = unit;
        this.working = working;
    }

    void cuts(ThreadPasses passes, Material material) {
        Length first = ThreadPasses.firstCut(thread, material);
        int count = passes.cuts().size() - 1;
        working.fact(
                "Depth of the thread, on radius",
                text(thread.depth()),
                new Source(thread.form().source()));
        working.step(
                "How many cuts, so that the first is no deeper than " + text(first) + " in " + material.name(),
                "n = (depth / first cut)², upwards to a whole number, at least " + (ThreadPasses.FEWEST - 1),
                "(" + figures(thread.depth()) + " / " + figures(first) + ")²",
                count + " cuts and one over without feeding in",
                Source.COMMON_PRACTICE);
        working.step(
                "Each takes the same area of chip",
                "depth after cut i = depth × √(i / n)",
                figures(thread.depth()) + " × √(1 / " + count + ")",
                "first " + text(passes.cuts().getFirst().step()) + ", last "
                        + text(passes.cuts().get(count - 1).step()),
                Source.COMMON_PRACTICE);
    }

    void slide(Infeed infeed) {
        if (infeed.isStraight()) {
            working.fact("Feed straight in", "slide movement is the depth", Source.COMMON_PRACTICE);
            return;
        }
        String angle = AngleText.degrees(infeed.angle(), ANGLE_DECIMALS);
        working.step(
                "Along a slide set over " + angle + " from square",
                "slide = depth / cos(angle)",
                figures(thread.depth()) + " / cos " + angle,
                text(infeed.along(thread.depth())),
                Source.GEOMETRY);
    }

    void speed(ScrewSpeed speed, Material material) {
        working.step(
                "Turns by surface speed: a third of the roughing speed for turning with high-speed steel",
                "n = v / (3 π d)",
                String.format(
                        Locale.ROOT,
                        "%.1f m/min / (3 π × %s mm)",
                        material.speeds(ToolMaterial.HSS).low().metresPerMinute(),
                        LengthText.mmFigures(thread.major(), LengthText.HUNDREDTH_MM)),
                rpm(speed.bySurface().rpm()),
                material.speeds(ToolMaterial.HSS).source());
        working.step(
                "Turns at which the nut is still opened in time: the carriage at 300 mm a minute",
                "n = 300 mm/min / lead",
                "300 / " + LengthText.mmFigures(thread.lead().length(), LengthText.MICROMETRE),
                rpm(speed.byCarriage().rpm()),
                Source.COMMON_PRACTICE);
    }

    private static String rpm(double rpm) {
        return String.format(Locale.ROOT, "%.0f rpm", rpm);
    }

    void train(PitchTrain train) {
        working.step(
                "Nearest train of these wheels: " + train.cut().train(),
                "pitch cut = leadscrew pitch × drivers / driven",
                "error "
                        + String.format(Locale.ROOT, "%.2g", train.cut().error().doubleValue()),
                Notations.PITCH.text(train.cut().pitch(), unit),
                Source.GEOMETRY);
        working.step(
                "Its error over the length, and what that takes from the effective diameter",
                "δ cot(half the angle between the flanks), at most half the tolerance",
                "δ = " + text(train.errorOver()) + ", allowed " + text(train.allowed()),
                text(train.usesUp()) + (train.isNearEnough() ? ", near enough" : ", too much"),
                Source.GEOMETRY);
    }

    void cautions() {
        working.caution("Keep hands, sleeves and rag clear of the work; never feel a thread while it turns.");
        if (thread.leftHand()) {
            working.caution("Left hand: start at the shoulder and cut away from the headstock.");
        }
        if (thread.isTaper()) {
            working.caution(
                    "A taper thread is cut with the tailstock set over or a taper attachment, 1 in 16 on diameter; the"
                            + " depth is the same all along.");
        }
        if (thread.starts() > 1) {
            working.caution("Cut each of the " + thread.starts() + " starts to full depth, then move on by one pitch, "
                    + text(thread.pitch().length()) + ", without turning the work.");
        }
    }

    private String text(Length length) {
        return LengthText.both(length, unit);
    }

    private String figures(Length length) {
        return LengthText.figures(length, unit);
    }
}
