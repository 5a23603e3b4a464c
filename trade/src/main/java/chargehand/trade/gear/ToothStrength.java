package chargehand.trade.gear;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;

/** What a load at the pitch circle does to the root of a tooth, by Lewis, with Barth's allowance for speed. */
final class ToothStrength {
    static final Field<Length> FACE = Field.optional(
            "face",
            "Width of the teeth",
            Kinds.where(
                    Kinds.SIZE,
                    face -> !face.isLessThan(Length.mm(0.5)) && !face.isMoreThan(Length.mm(1_000)),
                    "must lie between 0.5 mm and 1 m"),
            "30 mm; with the load");
    static final Field<Force> LOAD = Field.optional(
            "load",
            "Load at the pitch circle",
            Kinds.where(
                    Kinds.FORCE, force -> force.newtons() > 0 && force.newtons() <= 1e7, "must be more than nothing"),
            "1500 N; gives the stress at the root of a tooth");
    static final Field<SpindleSpeed> RPM = Field.optional(
            "rpm",
            "Speed of the wheel",
            Kinds.where(
                    Kinds.SPINDLE_SPEED,
                    speed -> speed.rpm() > 0 && speed.rpm() <= 20_000,
                    "must be more than nothing, and at most 20000 rpm"),
            "1200 rpm; teeth that run fast are loaded more by their own errors");

    static final List<Result> RESULTS = List.of(
            Result.sometimes("lewisForm", "Form factor Y of Lewis"),
            Result.sometimes("pitchSpeed", "Speed of the pitch circle"),
            Result.sometimes("speedFactor", "What the load is multiplied by for speed"),
            Result.sometimes("toothStress", "Bending stress at the root of a tooth"));

    /** Barth's rule for cut teeth, 1200 feet a minute and the speed over 1200, in metres a second. */
    private static final double BARTH = 1_200 * 0.3048 / 60;

    private static final double SECONDS = 60;
    private static final Source LEWIS =
            Source.memory("Shigley, Mechanical Engineering Design: Lewis's formula, Barth's factor");

    private final Spur spur;
    private final Asked asked;
    private final Working working;

    ToothStrength(Spur spur, Asked asked, Working working) {
        this.spur = spur;
        this.asked = asked;
        this.working = working;
    }

    void add(Answer answer) {
        LewisForm.of(spur).ifPresentOrElse(form -> add(form, answer), this::refuseWithoutForm);
    }

    private void refuseWithoutForm() {
        if (asked.has(LOAD)) {
            throw Refusal.of(
                    LOAD,
                    "Lewis's factor is held here for full-depth teeth of 20° without shift, 12 and more: leave the load"
                            + " out.");
        }
    }

    private void add(double form, Answer answer) {
        answer.with("lewisForm", Figure.of(form));
        if (asked.has(LOAD) != asked.has(FACE)) {
            throw Refusal.of(
                    asked.has(LOAD) ? FACE : LOAD, "is needed: a stress comes of the load and the width together.");
        }
        if (asked.has(RPM) && !asked.has(LOAD)) {
            throw Refusal.of(LOAD, "is needed with the speed, which only raises the load.");
        }
        if (asked.has(LOAD)) {
            working.fact("Form factor for " + spur.teeth() + " teeth", "Y = " + Figures.four(form), LewisForm.source());
            answer.with("toothStress", Figure.of(stress(form, speedFactor(answer))));
            working.caution(
                    "Lewis's sum is a first look at a tooth's strength: it knows nothing of wear, shock, fatigue or"
                            + " a root left sharp. Where a wheel that fails could hurt someone the competent person decides.");
        }
    }

    private double speedFactor(Answer answer) {
        if (!asked.has(RPM)) {
            return 1;
        }
        double metresPerSecond =
                Math.PI * spur.pitchDiameter() / 1_000 * asked.get(RPM).rpm() / SECONDS;
        double factor = (BARTH + metresPerSecond) / BARTH;
        working.step(
                "Load multiplied for speed, cut teeth",
                "Kv = (6.1 + v) / 6.1,  v = π d n",
                "(6.096 + " + Figures.four(metresPerSecond) + ") / 6.096",
                Figures.four(factor),
                LEWIS);
        answer.with("pitchSpeed", Figure.of(Speed.metresPerMinute(metresPerSecond * SECONDS)))
                .with("speedFactor", Figure.of(factor));
        return factor;
    }

    private Pressure stress(double form, double speedFactor) {
        double newtons = asked.get(LOAD).newtons();
        double face = asked.get(FACE).mm();
        double stress = speedFactor * newtons / (face * spur.module() * form);
        working.step(
                "Bending stress at the root, the load at the tip of one tooth",
                "σ = Kv F / (b m Y)",
                Figures.four(speedFactor) + " × " + Figures.four(newtons) + " / (" + Figures.four(face) + " × "
                        + Figures.four(spur.module()) + " × " + Figures.four(form) + ")",
                Figures.four(stress) + " MPa",
                LEWIS);
        return Pressure.megapascals(stress);
    }
}
