package chargehand.trade.taper;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** What to set for a taper, with each step written down. */
final class TaperSettings {
    private static final Source SET_OVER =
            Source.published("Jones, Turning and Boring (1919), setting over the tailstock");
    private static final double STEEP_DEGREES = 16;
    private static final double MOST_SET_OVER_DEGREES = 40;
    private static final double MOST_SINE_BAR_DEGREES = 45;
    private static final int ANGLE_DECIMALS = 4;
    private static final int RATE_DECIMALS = 6;
    private static final int RATIO_DECIMALS = 3;

    private final Taper taper;
    private final LengthUnit unit;
    private final Working working;

    TaperSettings(Taper taper, LengthUnit unit, Working working) {
        this.taper = taper;
        this.unit = unit;
        this.working = working;
    }

    /** Writes down the taper as ratio, per foot and in angles. */
    void angles() {
        working.step(
                "Ratio on diameter",
                "1 in 1 / t",
                "1 in 1 / " + rate(),
                "1 in " + Figures.atMost(RATIO_DECIMALS, taper.oneIn()),
                Source.GEOMETRY);
        working.step(
                "Taper per foot",
                "12 in × t",
                "12 in × " + rate(),
                LengthText.both(taper.perFoot(), unit),
                Source.GEOMETRY);
        working.step(
                "Half the included angle, for the compound slide",
                "tan(α/2) = t / 2",
                "arctan(" + rate() + " / 2)",
                said(taper.halfAngle()),
                Source.GEOMETRY);
        working.step(
                "Included angle",
                "α = 2 × α/2",
                "2 × " + AngleText.degrees(taper.halfAngle(), ANGLE_DECIMALS),
                said(taper.included()),
                Source.GEOMETRY);
    }

    Length setOver(Length whole) {
        if (taper.included().degrees() > MOST_SET_OVER_DEGREES) {
            throw Refusal.of(
                    TaperSum.WORK_LENGTH,
                    "no tailstock can be set over for " + said(taper.included())
                            + ": leave this out and use the compound slide.");
        }
        Length setOver = taper.setOver(whole);
        working.step(
                "Set-over of the tailstock, from the whole length between centres",
                "S = L × t / 2",
                LengthText.in(whole, unit) + " × " + rate() + " / 2",
                LengthText.both(setOver, unit),
                SET_OVER);
        working.caution("The set-over depends on the whole length and on how deep the centre holes are: try it on the"
                + " first piece with the dial gauge.");
        if (taper.included().degrees() > STEEP_DEGREES) {
            working.caution(
                    "This is too steep for setting over, since the centres would bear on their edges; reckoned along"
                            + " the work it would be " + LengthText.both(taper.setOverAlongWork(whole), unit)
                            + ". Use the compound slide.");
        }
        return setOver;
    }

    Length stack(Length bar) {
        Length stack = taper.sineBarStack(bar);
        working.step(
                "Gauge stack under the sine bar, which takes the included angle",
                "H = bar × sin α",
                LengthText.in(bar, unit) + " × sin " + AngleText.degrees(taper.included(), ANGLE_DECIMALS),
                LengthText.both(stack, unit),
                Source.GEOMETRY);
        if (taper.included().degrees() > MOST_SINE_BAR_DEGREES) {
            working.caution("Above 45° a sine bar loses its accuracy: set it to what is left of 90°, from a square.");
        }
        return stack;
    }

    private String rate() {
        return Figures.atMost(RATE_DECIMALS, taper.rate());
    }

    private static String said(Angle angle) {
        return AngleText.degrees(angle, ANGLE_DECIMALS) + " = " + AngleText.seconds(angle);
    }
}
