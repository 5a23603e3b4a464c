package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.material.SpeedBand;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** Chooses the spindle's speed: what material and tool suit, then the machine's own step at or below it. */
final class SpindleChoice {
    /** A step this much above the ideal is taken rather than the next one down. */
    private static final double AS_GOOD_AS = 1.05;

    private final Cut cut;
    private final Working working;

    SpindleChoice(Cut cut, Working working) {
        this.cut = cut;
        this.working = working;
    }

    CutSettings.Spindle choose() {
        Speed wanted = wanted();
        Length diameter = cut.diameter();
        SpindleSpeed ideal = Rotation.rpm(wanted, diameter);
        working.step(
                "Revolutions for that speed",
                "n = 1000 v / (π d)",
                "1000 × " + Figures.four(wanted.metresPerMinute()) + " / (π × "
                        + LengthText.mmFigures(diameter, LengthText.MICROMETRE) + ")",
                Figures.four(ideal.rpm()) + " rpm",
                Source.GEOMETRY);
        SpindleSpeed chosen = Steps.notAbove(cut.machine().speeds(), alsoGood(ideal));
        Speed speed = Rotation.speed(chosen, diameter);
        if (!cut.machine().speeds().isEmpty()) {
            working.fact(
                    "The machine's own speed at or below it, or no more than a twentieth above",
                    Figures.four(chosen.rpm()) + " rpm, " + Figures.four(speed.metresPerMinute()) + " m/min",
                    Source.COMMON_PRACTICE);
        }
        return new CutSettings.Spindle(wanted, speed, ideal, chosen);
    }

    private static SpindleSpeed alsoGood(SpindleSpeed ideal) {
        return SpindleSpeed.rpm(ideal.rpm() * AS_GOOD_AS);
    }

    private Speed wanted() {
        SpeedBand band = cut.material().speeds(cut.tool());
        Speed turning = turningSpeed(band);
        working.fact(
                "Turning speed of " + cut.material().name() + " with "
                        + cut.tool().title() + ", "
                        + Figures.four(band.low().metresPerMinute()) + " to "
                        + Figures.four(band.high().metresPerMinute()) + " m/min",
                Figures.four(turning.metresPerMinute()) + " m/min",
                band.source());
        double factor = cut.practice().speedFactor();
        var wanted = Speed.metresPerMinute(turning.metresPerMinute() * factor);
        if (factor < 1) {
            working.step(
                    "To " + cut.operation().word() + " takes a share of it",
                    "v = share × turning speed",
                    Figures.four(factor) + " × " + Figures.four(turning.metresPerMinute()),
                    Figures.four(wanted.metresPerMinute()) + " m/min",
                    Source.COMMON_PRACTICE);
        }
        return wanted;
    }

    /** Roughing takes the low end of the band, finishing the high end, anything between the middle. */
    private Speed turningSpeed(SpeedBand band) {
        if (cut.finishing()) {
            return band.high();
        }
        boolean heavy = cut.operation().depthIsOfCut()
                && cut.depth()
                        .filter(depth ->
                                depth.isMoreThan(cut.practice().depthFinish().times(2)))
                        .isPresent();
        return heavy ? band.low() : band.middle();
    }

    /** What the choice of speed says about the limit of the cut. */
    static CutSettings.Limit limit(CutSettings.Spindle spindle, Cut cut) {
        boolean anySpeed = cut.machine().speeds().isEmpty();
        if (!anySpeed && spindle.rpm().compareTo(alsoGood(spindle.ideal())) > 0) {
            return CutSettings.Limit.SLOWEST;
        }
        boolean fastest =
                !anySpeed && spindle.rpm().equals(cut.machine().speeds().getLast());
        return fastest && spindle.rpm().compareTo(spindle.ideal()) < 0
                ? CutSettings.Limit.FASTEST
                : CutSettings.Limit.TOOL;
    }
}
