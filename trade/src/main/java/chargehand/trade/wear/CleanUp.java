package chargehand.trade.wear;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Comparator;
import java.util.Optional;

/** Works out what a survey cleans up at and what becomes of the part. */
final class CleanUp {
    private static final Length STEP_MM = Length.mm(0.1);
    private static final Length STEP_INCH = Length.thou(5);

    private final Survey survey;
    private final Asked asked;
    private final Working working;
    private final LengthUnit unit;

    CleanUp(Survey survey, Asked asked, Working working) {
        this.survey = survey;
        this.asked = asked;
        this.working = working;
        unit = asked.unit();
    }

    Answer answer(boolean byRadius) {
        Length ovality = ovality();
        Length taper = taper();
        Reading worst = survey.worst();
        Length cleansAt = worst.least();
        working.fact(
                byRadius
                        ? "Cleans up at twice the least radius, turned about the same axis"
                        : "Cleans up at the least diameter, where the axis may follow the wear",
                LengthText.both(cleansAt, unit) + ", at " + worst.station(),
                Source.GEOMETRY);
        Optional<Length> turnTo = turnTo(cleansAt);
        Verdict verdict = verdict(ovality, taper, turnTo);
        var answer = new Answer()
                .with("verdict", Figure.of(verdict.word()))
                .with("ovality", Figure.of(ovality))
                .with("taper", Figure.of(taper))
                .with("worst", worst(worst))
                .with("cleansAt", Figure.of(cleansAt));
        asked.find(CleanUpSum.NEW_SIZE).ifPresent(size -> wear(size, cleansAt, byRadius, answer));
        turnTo.ifPresent(size -> answer.with("turnTo", Figure.of(size)));
        turnTo.ifPresent(size -> left(size, answer));
        warn(byRadius, verdict);
        return answer.with("why", Figure.of(why(verdict, ovality, taper, turnTo)));
    }

    private enum Verdict {
        KEEP("keep"),
        TURN("turn"),
        SCRAP("scrap");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private static Figure worst(Reading worst) {
        return new Answer()
                .with("station", Figure.of(worst.station()))
                .with("angle", Figure.of(worst.angle()))
                .with("diameter", Figure.of(worst.least()))
                .asGroup();
    }

    private Length ovality() {
        Survey.Station oval = survey.mostOval();
        difference("Out of round at " + oval.name() + ", the most anywhere", oval.most(), oval.least(), "most − least");
        return oval.ovality();
    }

    private Length taper() {
        Survey.Station large = survey.largest();
        Survey.Station small = survey.smallest();
        difference(
                "Mean diameter at " + large.name() + " over that at " + small.name(),
                large.mean(),
                small.mean(),
                "mean − mean");
        return survey.taper();
    }

    private void difference(String say, Length more, Length less, String formula) {
        working.step(
                say,
                formula,
                LengthText.in(more, unit) + " − " + LengthText.in(less, unit),
                LengthText.both(more.minus(less), unit),
                Source.GEOMETRY);
    }

    /** The next size down that the shop turns to; empty where every one of its sizes is too large. */
    private Optional<Length> turnTo(Length cleansAt) {
        Optional<Length> size = asked.find(CleanUpSum.STEPS)
                .map(steps -> steps.stream()
                        .filter(step -> !step.isMoreThan(cleansAt))
                        .max(Comparator.naturalOrder()))
                .orElseGet(() -> Optional.of(nextBelow(cleansAt)));
        working.fact(
                "Next size down that is turned to",
                size.map(length -> LengthText.both(length, unit)).orElse("none of those given is small enough"),
                Source.COMMON_PRACTICE);
        return size;
    }

    private Length nextBelow(Length cleansAt) {
        Length step = unit == LengthUnit.INCH ? STEP_INCH : STEP_MM;
        Length below = new Length(Math.floorDiv(cleansAt.nanometres(), step.nanometres()) * step.nanometres());
        return below.isPositive() ? below : cleansAt;
    }

    private Verdict verdict(Length ovality, Length taper, Optional<Length> turnTo) {
        Length allow = asked.get(CleanUpSum.ALLOW);
        Length worst = survey.worst().least();
        Optional<Length> least = asked.find(CleanUpSum.LEAST);
        boolean small = least.filter(worst::isLessThan).isPresent();
        boolean worn = asked.find(CleanUpSum.NEW_SIZE)
                .filter(size -> size.minus(worst).isMoreThan(allow))
                .isPresent();
        if (!small && !worn && !ovality.isMoreThan(allow) && !taper.isMoreThan(allow)) {
            return Verdict.KEEP;
        }
        boolean room =
                turnTo.isPresent() && least.filter(turnTo.get()::isLessThan).isEmpty();
        return room && !small ? Verdict.TURN : Verdict.SCRAP;
    }

    private void wear(Length newSize, Length cleansAt, boolean byRadius, Answer answer) {
        Length wear = newSize.minus(cleansAt);
        difference("Worn below new", newSize, cleansAt, "new − least");
        answer.with("wear", Figure.of(wear));
        if (!byRadius && wear.isPositive() && wear.times(2).isLessThan(newSize)) {
            Length oneSide = newSize.minus(wear.times(2));
            working.step(
                    "If all the wear is on one side and the axis must stay where it was",
                    "new − 2 × wear",
                    LengthText.in(newSize, unit) + " − 2 × " + LengthText.in(wear, unit),
                    LengthText.both(oneSide, unit),
                    Source.GEOMETRY);
            answer.with("cleansAtOneSide", Figure.of(oneSide));
        }
        if (survey.largestReading().isMoreThan(newSize)) {
            working.caution("A reading is larger than the size when new: check the reading, or the size.");
        }
    }

    private void left(Length turnTo, Answer answer) {
        asked.find(CleanUpSum.LEAST).ifPresent(least -> {
            difference("Left above the least size", turnTo, least, "turned − least");
            answer.with("left", Figure.of(turnTo.minus(least)));
        });
    }

    private void warn(boolean byRadius, Verdict verdict) {
        if (!byRadius) {
            working.caution(
                    "Diameters do not show wear on one side: where the axis must stay, dial it between centres.");
        }
        if (!survey.readsRound()) {
            working.caution("A place read in one direction only can be more out of round than this shows.");
        }
        if (!asked.has(CleanUpSum.LEAST)) {
            working.caution("No least size is given: whoever answers for the part must say how small it may become.");
        }
        if (verdict != Verdict.KEEP) {
            working.caution("Look for cracks before turning; what mates with it must be made to the new size.");
        }
    }

    private String why(Verdict verdict, Length ovality, Length taper, Optional<Length> turnTo) {
        String shape = "Out of round by " + LengthText.in(ovality, unit) + ", " + LengthText.in(taper, unit)
                + " from place to place; ";
        return shape
                + switch (verdict) {
                    case KEEP -> "within what may stay.";
                    case TURN -> "it cleans up at " + LengthText.in(turnTo.orElseThrow(), unit) + ".";
                    case SCRAP ->
                        turnTo.isPresent()
                                ? "what cleans it up goes below its least size."
                                : "no size that is turned to cleans it up.";
                };
    }
}
