package chargehand.trade.taper;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Optional;

/** Settles what a taper is from whichever two or three facts were given, and refuses facts that do not go together. */
final class TaperQuestion {
    /** How far an end that is given may lie from the end that the rest makes. */
    private static final Length AGREE = Length.mm(0.05);

    private static final Length FOOT = Length.in(12);
    private static final List<Field<?>> STEEPNESS =
            List.of(TaperSum.RATIO, TaperSum.PER_FOOT, TaperSum.ANGLE, TaperSum.STANDARD, TaperSum.TOPS);
    private static final int RATE_DECIMALS = 6;
    private static final double STRAIGHT_ANGLE = 180;
    private static final double LARGEST_MM = 100_000;

    private final Asked asked;
    private final Working working;
    private final Optional<Length> large;
    private final Optional<Length> small;
    private final Optional<Length> length;

    TaperQuestion(Asked asked, Working working) {
        this.asked = asked;
        this.working = working;
        large = asked.find(TaperSum.LARGE);
        small = asked.find(TaperSum.SMALL);
        length = asked.find(TaperSum.LENGTH);
    }

    Cone cone() {
        if (!asked.has(TaperSum.TOPS) && (asked.has(TaperSum.LARGE_BALL) || asked.has(TaperSum.SMALL_BALL))) {
            throw Refusal.of(TaperSum.TOPS, "is needed with the balls: how far apart their tops lie along the hole.");
        }
        List<Field<?>> given = STEEPNESS.stream().filter(asked::has).toList();
        if (given.size() > 1) {
            throw Refusal.of(
                    given.get(1),
                    "the taper is given twice, as " + given.get(0).name() + " and as "
                            + given.get(1).name() + ": give one of them.");
        }
        if (large.isPresent() && small.isPresent() && !small.get().isLessThan(large.get())) {
            throw Refusal.of(TaperSum.SMALL, "the small end must be smaller than the large end.");
        }
        return given.isEmpty() ? fromEnds() : complete(steepness(given.getFirst()));
    }

    private Cone fromEnds() {
        if (large.isEmpty() || small.isEmpty() || length.isEmpty()) {
            throw Refusal.of(
                    TaperSum.RATIO,
                    "two or three facts are needed: both ends and the length, or a ratio, a taper per foot, an angle or a"
                            + " machine taper with what is known of the ends.");
        }
        Taper taper = made(TaperSum.LENGTH, large.get().minus(small.get()).over(length.get()));
        rate(
                taper,
                "t = (D − d) / l",
                "(" + said(large.get()) + " − " + said(small.get()) + ") / " + said(length.get()));
        return new Cone(taper, large, small, length);
    }

    private Taper steepness(Field<?> given) {
        if (given.equals(TaperSum.STANDARD)) {
            StandardTaper standard = asked.get(TaperSum.STANDARD);
            working.fact(
                    standard.name() + " taper",
                    LengthText.in(standard.taper().perFoot(), asked.unit()) + " per foot",
                    standard.source());
            return perFoot(standard.taper(), standard.taper().perFoot());
        }
        if (given.equals(TaperSum.PER_FOOT)) {
            Length change = asked.get(TaperSum.PER_FOOT);
            return perFoot(made(TaperSum.PER_FOOT, change.over(FOOT)), change);
        }
        if (given.equals(TaperSum.TOPS)) {
            return byBalls();
        }
        if (given.equals(TaperSum.ANGLE)) {
            Taper taper = included(asked.get(TaperSum.ANGLE));
            String angle = AngleText.degrees(asked.get(TaperSum.ANGLE), 4);
            return rate(taper, "t = 2 tan(α/2)", "2 × tan(" + angle + " / 2)");
        }
        Taper taper = asked.get(TaperSum.RATIO);
        return rate(taper, "t = 1 / k", "1 / " + Figures.atMost(3, taper.oneIn()));
    }

    /** Two balls rest in a hole; the line between their middles and the radii make the angle of its side. */
    private Taper byBalls() {
        Length larger = ball(TaperSum.LARGE_BALL);
        Length smaller = ball(TaperSum.SMALL_BALL);
        if (!smaller.isLessThan(larger)) {
            throw Refusal.of(TaperSum.SMALL_BALL, "the ball that goes in first is smaller than the other.");
        }
        Length radii = larger.minus(smaller).half();
        Length middles = asked.get(TaperSum.TOPS).minus(radii);
        if (!larger.plus(smaller).half().isLessThan(middles)) {
            throw Refusal.of(TaperSum.TOPS, "balls so near each other would touch: take a smaller one, further in.");
        }
        double sine = radii.over(middles);
        working.step(
                "From the middle of one ball to that of the other",
                "h − (R1 − R2)",
                said(asked.get(TaperSum.TOPS)) + " − " + said(radii),
                said(middles),
                Source.GEOMETRY);
        Taper taper = made(TaperSum.TOPS, 2 * sine / Math.sqrt(1 - sine * sine));
        return rate(
                taper,
                "t = 2 tan(α/2),  sin(α/2) = (R1 − R2) / middles",
                "2 × tan(arcsin(" + said(radii) + " / " + said(middles) + "))");
    }

    private Length ball(Field<Length> field) {
        return asked.find(field)
                .orElseThrow(() -> Refusal.of(field, "is needed with the tops of the balls: " + field.hint() + "."));
    }

    private Taper perFoot(Taper taper, Length change) {
        return rate(taper, "t = per foot / 12 in", said(change) + " / " + said(FOOT));
    }

    private Taper rate(Taper taper, String formula, String numbers) {
        working.step("Taper: change of diameter over length", formula, numbers, rate(taper), Source.GEOMETRY);
        return taper;
    }

    private static Taper made(Field<?> field, double rate) {
        if (!Taper.isPossible(rate)) {
            throw Refusal.of(field, "no taper can be this steep or this slight: check this and what goes with it.");
        }
        return new Taper(rate);
    }

    private static Taper included(Angle angle) {
        if (!(angle.degrees() > 0 && angle.degrees() < STRAIGHT_ANGLE)) {
            throw Refusal.of(TaperSum.ANGLE, "an included angle lies between 0° and 180°.");
        }
        return made(TaperSum.ANGLE, 2 * angle.half().tan());
    }

    private Cone complete(Taper taper) {
        if (asked.has(TaperSum.STANDARD) && large.isEmpty() && small.isEmpty() && length.isEmpty()) {
            StandardTaper standard = asked.get(TaperSum.STANDARD);
            return new Cone(taper, Optional.of(standard.large()), standard.small(), standard.length());
        }
        if (large.isPresent() && small.isPresent() && length.isPresent()) {
            agree(taper);
        }
        Cone cone = thirdSize(taper);
        if (cone.small().filter(Length::isNegative).isPresent()) {
            Length most = cone.large().orElseThrow().times(taper.oneIn());
            throw Refusal.of(
                    TaperSum.LENGTH, "the taper comes to a point before this length: at most " + said(most) + ".");
        }
        return cone;
    }

    private Cone thirdSize(Taper taper) {
        double longest = large.isPresent() && small.isPresent()
                ? large.get().minus(small.get()).mm() * taper.oneIn()
                : length.orElse(Length.ZERO).mm() * taper.rate();
        if (longest > LARGEST_MM) {
            throw Refusal.of(TaperSum.LENGTH, "with this taper the part would be larger than any that can be held.");
        }
        Cone cone = Cone.of(taper, large, small, length);
        if (cone.large().isPresent()
                && cone.small().isPresent()
                && cone.length().isPresent()) {
            working.step(
                    "The ends and the length go together",
                    "D = d + t × l",
                    said(cone.small().get()) + " + " + rate(taper) + " × "
                            + said(cone.length().get()),
                    said(cone.large().get()),
                    Source.GEOMETRY);
        }
        return cone;
    }

    private void agree(Taper taper) {
        Length made = small.orElseThrow().plus(taper.changeOver(length.orElseThrow()));
        if (!made.isWithin(AGREE, large.orElseThrow())) {
            throw Refusal.of(
                    TaperSum.LARGE,
                    "this end does not go with the rest, which makes it " + said(made) + ": leave one of them out.");
        }
    }

    private static String rate(Taper taper) {
        return Figures.atMost(RATE_DECIMALS, taper.rate());
    }

    private String said(Length size) {
        return LengthText.in(size, asked.unit());
    }
}
