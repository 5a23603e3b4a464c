package chargehand.trade.packer;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Notations;
import chargehand.measure.Pressure;
import chargehand.measure.PressureRate;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;

/** Works out the next packer from what was asked. Inside, pressures are bar and thicknesses millimetres. */
final class PackerWork {
    private static final Source RULE = Source.memory("Bayes' rule for a straight line with normal scatter");

    /** How far off a gauge may be where nothing is said, over the target. */
    private static final double GAUGE = 0.01;

    /** How well a sound valve lifts again, over the target: one standard deviation. */
    private static final double LIFTS_AGAIN = 0.005;

    private final Asked asked;
    private final Working working;
    private final PackerAim aim;
    private final List<Trial> trials;
    private final ValveModel model;

    PackerWork(Asked asked, Working working) {
        this.asked = asked;
        this.working = working;
        aim = aim();
        trials = asked.get(PackerSum.TRIALS).stream()
                .map(entry -> new Trial(
                        entry.get(PackerSum.THICK).mm(),
                        entry.get(PackerSum.LIFTED).bar()))
                .toList();
        model = new ValveModel(trials, new ValvePrior(asked, working).rate(), aim.target(), reading());
    }

    private PackerAim aim() {
        double target = asked.get(PackerSum.TARGET).bar();
        double tolerance = asked.get(PackerSum.TOLERANCE).bar();
        double most = asked.get(PackerSum.MOST).bar();
        if (tolerance >= target) {
            throw Refusal.of(PackerSum.TOLERANCE, "the tolerance must be well below the target.");
        }
        if (most <= target) {
            throw Refusal.of(
                    PackerSum.MOST, "the pressure never to be exceeded must lie above the target, or no test is safe.");
        }
        return new PackerAim(
                target,
                tolerance,
                most,
                asked.get(PackerSum.ADDS),
                asked.get(PackerSum.STEP).mm());
    }

    private double reading() {
        double gauge = asked.find(PackerSum.GAUGE).map(Pressure::bar).orElse(GAUGE * aim.target());
        double reading = Math.hypot(gauge / Bell.BAND, LIFTS_AGAIN * aim.target());
        working.step(
                "One test is good to this, one standard deviation: half of what the gauge may be off, and lifting again",
                "√((g / 2)² + (0.005 p)²)",
                "√((" + bar(gauge) + " / 2)² + (0.005 × " + bar(aim.target()) + ")²)",
                pressure(reading),
                Source.COMMON_PRACTICE);
        return reading;
    }

    Answer answer() {
        writeLine();
        var setting = new Setting(model, aim, trials);
        var answer = new Answer();
        switch (setting.verdict()) {
            case Verdict.Stop(var why) -> {
                answer.with("stop", Figure.of(why));
                working.caution(why);
            }
            case Verdict.Inside(var kept) -> {
                answer.with("stop", Figure.of("The last test was inside: leave this packer and do not test on."));
                add(kept, 0, answer);
            }
            case Verdict.GoOn(var next) -> goOn(setting, next, answer);
        }
        warn();
        Bell rate = model.rate();
        return answer.with("rate", Figure.of(PressureRate.barPerMm(rate.mean())))
                .with("rateUncertainty", Figure.of(PressureRate.barPerMm(Bell.BAND * rate.spread())));
    }

    private void goOn(Setting setting, NextPacker next, Answer answer) {
        double left = setting.testsLeft(next);
        working.step(
                "Packer nearest the target on the line",
                "x + (target − p) / b",
                mm(trials.getLast().packer()) + " + (" + bar(aim.target()) + " − "
                        + bar(model.lifts(trials.getLast().packer()).mean()) + ") / "
                        + Figures.four(model.rate().mean()),
                thickness(trials.getLast().packer()
                        + (aim.target() - model.lifts(trials.getLast().packer()).mean())
                                / model.rate().mean()),
                RULE);
        working.fact(
                "Of the packers that can be made and stay under " + pressure(aim.most())
                        + ", the one that misses least, a miss that can be skimmed counting half",
                thickness(next.thickness()),
                Source.COMMON_PRACTICE);
        add(next, left, answer);
    }

    private void writeLine() {
        Bell rate = model.rate();
        Trial last = trials.getLast();
        working.step(
                "The line through the tests, each counting for how sure it is, with what was known before",
                "p = a + b (x − x0)",
                bar(model.lifts(last.packer()).mean()) + " + " + Figures.four(rate.mean()) + " × (x − "
                        + mm(last.packer()) + ")",
                Figures.four(rate.mean()) + " ± " + Figures.four(Bell.BAND * rate.spread()) + " bar/mm",
                RULE);
        for (Trial trial : trials) {
            working.fact(
                    "Test with " + thickness(trial.packer()),
                    pressure(trial.lifted()) + ", " + Figures.atMost(1, model.off(trial))
                            + " standard deviations off the line",
                    RULE);
        }
    }

    private void add(NextPacker next, double testsLeft, Answer answer) {
        Bell reads = next.reads();
        working.step(
                "Its test should read",
                "p ± 2 s",
                bar(reads.mean()) + " ± 2 × " + bar(reads.spread()),
                pressure(reads.low()) + " to " + pressure(reads.high())
                        + String.format(Locale.ROOT, ", inside with a chance of %.0f %%", 100 * next.chance()),
                RULE);
        answer.with("packer", Figure.of(Length.mm(next.thickness())))
                .with(
                        "change",
                        Figure.of(Length.mm(next.thickness() - trials.getLast().packer())))
                .with(
                        "expect",
                        new Answer()
                                .with("pressure", Figure.of(Pressure.bar(reads.mean())))
                                .with("low", Figure.of(Pressure.bar(Math.max(0, reads.low()))))
                                .with("high", Figure.of(Pressure.bar(reads.high())))
                                .asGroup())
                .with("chanceInBand", Figure.of(next.chance()))
                .with("testsLeft", Figure.of(testsLeft));
    }

    private void warn() {
        if (!asked.has(PackerSum.GAUGE)) {
            working.caution("The gauge is taken to be good to 1 % of the target: give what its check says.");
        }
        if (aim.tolerance() < Bell.BAND * model.reading()) {
            working.caution(
                    "The tolerance is hardly wider than one test is good to: use a better gauge, or test again.");
        }
        working.caution(
                "Test with water and behind a guard where that can be, raise the pressure slowly, and never go past the"
                        + " pressure never to be exceeded, whatever stands here.");
        working.caution("Whether the valve is fit and sealed is for the competent person, not for this sum.");
    }

    private static String bar(double bar) {
        return Figures.four(bar);
    }

    private static String mm(double millimetres) {
        return Figures.atMost(3, millimetres);
    }

    private String pressure(double bar) {
        return Notations.PRESSURE.text(Pressure.bar(bar), asked.unit());
    }

    private String thickness(double millimetres) {
        return LengthText.both(Length.mm(millimetres), asked.unit());
    }
}
