package chargehand.trade.taper;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Optional;

/**
 * A taper plug standing on its small end on a surface plate, measured over two rolls that lie against it: on the plate, and
 * again on equal stacks of gauges. The two readings tell its angle and its small end, whatever rounds off the edge.
 *
 * @param taper how steep it is
 * @param small the small end, sharp
 * @param rolls diameter of both rolls
 */
record OverRolls(Taper taper, Length small, Length rolls) {
    private static final double STEEPEST_DEGREES = 60;
    private static final int ANGLE_DECIMALS = 4;

    /** Whether rolls rest against so steep a side. */
    boolean touch() {
        return taper.halfAngle().degrees() <= STEEPEST_DEGREES;
    }

    /** Over rolls that stand on gauges of this height, or on the plate. */
    Length at(Length height) {
        double tan = taper.rate() / 2;
        Length beside = rolls.times(1 + tan + Math.sqrt(1 + tan * tan));
        return small.plus(beside).plus(height.times(2 * tan));
    }

    Figure figure(Optional<Length> height, LengthUnit unit, Working working) {
        Length low = at(Length.ZERO);
        String half = AngleText.degrees(taper.halfAngle(), ANGLE_DECIMALS);
        working.step(
                "Over rolls on the plate, the small end down",
                "M1 = d + w (1 + tan α/2 + sec α/2),  w across a roll",
                LengthText.in(small, unit) + " + " + LengthText.in(rolls, unit) + " × (1 + tan " + half + " + sec "
                        + half + ")",
                LengthText.both(low, unit),
                Source.GEOMETRY);
        var figures = new Answer().with("low", Figure.of(low));
        height.ifPresent(raised -> {
            Length high = at(raised);
            working.step(
                    "Over rolls on the gauges",
                    "M2 = M1 + 2 H tan α/2",
                    LengthText.in(low, unit) + " + 2 × " + LengthText.in(raised, unit) + " × tan " + half,
                    LengthText.both(high, unit),
                    Source.GEOMETRY);
            figures.with("high", Figure.of(high));
        });
        return figures.asGroup();
    }
}
