package chargehand.trade.wheels;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes down how a train is found and what it cuts. */
final class WheelsWorking {
    private static final Source RULE = Source.memory("Machinery's Handbook, change gears for screw cutting");
    private static final int RATIO_DECIMALS = 6;
    private static final int PARTS_PER_MILLION = 1_000_000;

    /** The prime in the inch of 25.4 mm: it stands in a ratio wherever inch meets metre. */
    private static final BigInteger INCH_PRIME = BigInteger.valueOf(127);

    private final Pitch wanted;
    private final Pitch leadscrew;
    private final LengthUnit unit;
    private final Working working;

    WheelsWorking(Pitch wanted, Pitch leadscrew, LengthUnit unit, Working working) {
        this.wanted = wanted;
        this.leadscrew = leadscrew;
        this.unit = unit;
        this.working = working;
    }

    void ratio(BigFraction ratio) {
        working.step(
                "Turns of the leadscrew for one turn of the work",
                "R = pitch to cut / pitch of the leadscrew",
                said(wanted) + " / " + said(leadscrew),
                said(ratio) + " = " + Figures.atMost(RATIO_DECIMALS, ratio.doubleValue()),
                RULE);
        working.caution("Isolate the lathe before changing wheels, and put the guard back before it is started.");
        if (mixesInchAndMetre(ratio)) {
            working.caution(
                    "Inch and metric meet here: keep the half-nut closed until the thread is finished, and bring the"
                            + " tool back by reversing the lathe.");
        }
    }

    private static boolean mixesInchAndMetre(BigFraction ratio) {
        return ratio.getNumerator().mod(INCH_PRIME).signum() == 0
                || ratio.getDenominator().mod(INCH_PRIME).signum() == 0;
    }

    void best(CutPitch cut, Optional<Length> length) {
        Train train = cut.train();
        working.step(
                "Ratio of the best train",
                "drivers / driven" + (train.gearbox().equals(BigFraction.ONE) ? "" : " × gearbox"),
                train.toString(),
                said(train.ratio()) + " = "
                        + Figures.atMost(RATIO_DECIMALS, train.ratio().doubleValue()),
                RULE);
        working.step(
                "Pitch that it cuts",
                "pitch of the leadscrew × ratio",
                said(leadscrew) + " × " + said(train.ratio()),
                said(cut.pitch()),
                RULE);
        working.step(
                "Error",
                "pitch cut / pitch wanted − 1",
                Figures.atMost(RATIO_DECIMALS, cut.pitch().inMm()) + " mm / "
                        + Figures.atMost(RATIO_DECIMALS, wanted.inMm()) + " mm − 1",
                error(cut),
                Source.GEOMETRY);
        length.ifPresent(engaged -> over(cut, engaged));
        if (!cut.exact()) {
            working.caution(
                    "No train here is exact. Judge the error over the length that is engaged, and try the first piece"
                            + " in its nut or gauge.");
        }
    }

    private void over(CutPitch cut, Length engaged) {
        working.step(
                "How far the thread runs out over the length engaged",
                "length × error",
                LengthText.in(engaged, unit) + " × "
                        + Figures.atMost(1, cut.error().doubleValue() * PARTS_PER_MILLION) + " / 1000000",
                LengthText.both(cut.errorOver(engaged), unit),
                Source.GEOMETRY);
    }

    /** Why no train was found, in a sentence. */
    String none(int wheels, Optional<Quadrant> quadrant) {
        if (wheels < 2) {
            return "One wheel makes no train: at least two are needed.";
        }
        return quadrant.map(limits -> "No two wheels of the set have between " + limits.leastTogether() + " and "
                        + limits.mostTogether() + " teeth together in a train that clears its studs.")
                .orElse("The wheels make no train.");
    }

    private static String error(CutPitch cut) {
        return cut.exact()
                ? "none: the train is exact"
                : Figures.atMost(1, cut.error().doubleValue() * PARTS_PER_MILLION) + " parts in a million";
    }

    private String said(Pitch pitch) {
        return Notations.PITCH.text(pitch, unit);
    }

    private static String said(BigFraction fraction) {
        return fraction.getDenominator().equals(BigInteger.ONE)
                ? fraction.getNumerator().toString()
                : fraction.getNumerator() + "/" + fraction.getDenominator();
    }
}
