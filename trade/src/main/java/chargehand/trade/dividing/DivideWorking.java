package chargehand.trade.dividing;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes down how the crank's move is found. */
final class DivideWorking {
    private static final Source RULE = Source.published("US Army Ordnance subcourse OD1644, indexing");
    private static final Source COMPOUND = Source.memory("Machinery's Handbook, compound indexing");
    private static final Source DIFFERENTIAL = Source.memory("Machinery's Handbook, differential indexing");
    private static final int SECONDS_DECIMALS = 6;

    private final Dividing head;
    private final Working working;

    DivideWorking(Dividing head, Working working) {
        this.head = head;
        this.working = working;
    }

    void divisions(int divisions, BigFraction crank) {
        working.step(
                "Turns of the crank from one division to the next",
                "worm / divisions",
                head.worm() + " / " + divisions,
                said(crank),
                RULE);
    }

    void angle(Angle angle, BigFraction crank) {
        working.step(
                "Turns of the crank for the angle",
                "worm × angle / 360°",
                head.worm() + " × " + AngleText.seconds(angle) + " / 360°",
                said(crank),
                RULE);
    }

    void best(Indexed best, BigFraction crank, int divisions) {
        switch (best.way()) {
            case Way.Plain plain -> plain(plain, crank);
            case Way.Compound compound -> compound(compound);
            case Way.Differential differential -> differential(differential, divisions);
        }
        if (best.exact()) {
            working.fact("The work comes to its place exactly", WayText.of(best.way()), RULE);
        } else {
            working.step(
                    "Error of one move at the work",
                    "(turns made − turns wanted) × 360° / worm",
                    "(" + Figures.atMost(SECONDS_DECIMALS, best.way().crank().doubleValue()) + " − "
                            + Figures.atMost(SECONDS_DECIMALS, crank.doubleValue()) + ") × 360° / " + head.worm(),
                    AngleText.degrees(best.errorAtWork(), SECONDS_DECIMALS),
                    RULE);
            working.caution(
                    "No way with these plates is exact. Repeating one move adds its error up all round the work; the"
                            + " nearest hole counted from the start each time does not.");
        }
    }

    private void plain(Way.Plain plain, BigFraction crank) {
        BigFraction holes = crank.subtract(plain.turns()).multiply(plain.circle());
        working.step(
                "Holes in the " + plain.circle() + " circle, beyond the whole turns",
                "holes = (turns − whole turns) × circle",
                "(" + said(crank) + " − " + plain.turns() + ") × " + plain.circle(),
                holes.getDenominator().equals(BigInteger.ONE)
                        ? Integer.toString(plain.holes())
                        : said(holes) + ", nearest " + plain.holes(),
                RULE);
        sectorArms(plain);
    }

    private void sectorArms(Way.Plain move) {
        if (move.holes() > 0) {
            working.fact(
                    "Sector arms",
                    "set them over " + move.holes() + (move.holes() == 1 ? " space" : " spaces")
                            + ", the hole the pin stands in not counted",
                    Source.COMMON_PRACTICE);
        }
    }

    private void compound(Way.Compound compound) {
        working.step(
                "Two moves in two circles of one plate",
                "a / c₁ + b / c₂",
                compound.first().turns() + " + " + compound.first().holes() + "/"
                        + compound.first().circle() + (compound.plateHoles() < 0 ? " − " : " + ")
                        + Math.abs(compound.plateHoles()) + "/" + compound.plateCircle(),
                said(compound.crank()) + " turns",
                COMPOUND);
        working.caution(
                "In compound indexing the pin behind the plate must be drawn for the second move, and a miscount"
                        + " spoils the work: try it all round with a scribed line first.");
    }

    private void differential(Way.Differential differential, int divisions) {
        PlateGears gears = differential.gears();
        working.step(
                "Turns of the plate for one of the spindle",
                "r = worm − divisions × crank",
                head.worm() + " − " + divisions + " × " + said(differential.crank()),
                said(gears.ratio()) + ", so the plate goes " + WayFigure.direction(gears),
                DIFFERENTIAL);
        working.step(
                "Gears for that ratio",
                gears.stud().isPresent() ? "(spindle × first on stud) / (second on stud × worm)" : "spindle / worm",
                gears.stud()
                        .map(stud -> "(" + gears.spindle() + " × " + stud.first() + ") / (" + stud.second() + " × "
                                + gears.worm() + ")")
                        .orElse(gears.spindle() + " / " + gears.worm()),
                said(gears.ratio().abs()),
                DIFFERENTIAL);
        sectorArms(differential.move());
        working.caution(
                "Idlers are counted for a head whose plate goes with the crank when one idler stands between spindle"
                        + " and worm shaft. Turn the crank before cutting and see that the plate goes "
                        + WayFigure.direction(gears) + "; if it does not, put in or take out one idler.");
        working.caution("The plate's lock pin must be out in differential indexing, or the gears break.");
    }

    Length chord(Length diameter, int divisions) {
        Length chord = diameter.times(Math.sin(Math.PI / divisions));
        working.step(
                "Chord from one division to the next, to check with dividers",
                "D sin(180° / N)",
                LengthText.mm(diameter, LengthText.MICROMETRE) + " × sin(180° / " + divisions + ")",
                LengthText.both(chord, LengthUnit.MILLIMETRE),
                Source.GEOMETRY);
        return chord;
    }

    void places(BoltCircle circle) {
        BoltCircle.Place second = circle.places().get(1 % circle.holes());
        working.step(
                "Holes from the middle of the circle, the first straight out to the right, against the clock; the second",
                "x = D/2 cos(360° (k − 1) / N),  y = D/2 sin(360° (k − 1) / N)",
                "D = " + LengthText.mm(circle.diameter(), LengthText.MICROMETRE) + ", N = " + circle.holes() + ", k = "
                        + second.hole(),
                LengthText.mm(second.across(), LengthText.MICROMETRE) + " across, "
                        + LengthText.mm(second.up(), LengthText.MICROMETRE) + " up",
                Source.GEOMETRY);
    }

    void table(HoleTable table) {
        working.fact(
                "Table of places: each counted from the start and put in the nearest hole",
                "the " + table.circle() + " circle is off by at most "
                        + AngleText.degrees(table.worst(), SECONDS_DECIMALS),
                Source.GEOMETRY);
    }

    private static String said(BigFraction fraction) {
        BigInteger[] parts = fraction.getNumerator().divideAndRemainder(fraction.getDenominator());
        if (parts[1].signum() == 0) {
            return parts[0].toString();
        }
        if (parts[0].signum() == 0) {
            return fraction.getNumerator() + "/" + fraction.getDenominator();
        }
        return parts[0] + " " + parts[1].abs() + "/" + fraction.getDenominator();
    }
}
