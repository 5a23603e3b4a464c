package chargehand.trade.taper;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** A taper from whatever is known of it, and how to set for it. */
@AutoService(Sum.class)
public final class TaperSum implements Sum {
    static final Field<Length> LARGE =
            Field.optional("large", "Large end", Kinds.WORK_SIZE, "38 mm; leave it out to have it worked out");
    static final Field<Length> SMALL =
            Field.optional("small", "Small end", Kinds.WORK_SIZE, "25 mm; leave it out to have it worked out");
    static final Field<Length> LENGTH = Field.optional(
            "length", "Length of the taper", Kinds.WORK_SIZE, "60 mm along the axis, between the two ends");
    static final Field<Taper> RATIO = Field.optional(
            "ratio", "Ratio", TaperKinds.RATIO, "1 in 48, on diameter; leave it out if the ends are given");
    static final Field<Length> PER_FOOT = Field.optional(
            "perFoot", "Taper per foot", Kinds.WORK_SIZE, "5/8 in: how much the diameter changes in a foot");
    static final Field<Angle> ANGLE =
            Field.optional("angle", "Included angle", Kinds.ANGLE, "60°, between opposite sides");
    static final Field<StandardTaper> STANDARD =
            Field.optional("standard", "Machine taper", TaperKinds.STANDARD, "MT 3, B&S 7, Jarno 10, Jacobs 6");
    static final Field<Length> LARGE_BALL = Field.optional(
            "largeBall",
            "Larger ball, to measure a hole",
            Kinds.WORK_SIZE,
            "30 mm; with the smaller one and their tops");
    static final Field<Length> SMALL_BALL =
            Field.optional("smallBall", "Smaller ball", Kinds.WORK_SIZE, "25 mm, which goes in first");
    static final Field<Length> TOPS = Field.optional(
            "tops", "From the top of one ball to that of the other", Kinds.WORK_SIZE, "62 mm along the hole");
    static final Field<Length> WORK_LENGTH = Field.optional(
            "workLength",
            "Whole length between centres",
            Kinds.WORK_SIZE,
            "250 mm; give it to have the tailstock's set-over");
    private static final Field<Length> BAR = Field.optional(
            "bar", "Sine bar, between rollers", Kinds.WORK_SIZE, "100 mm or 5 in; give it to have the stack");

    static final Field<Length> ROLLS = Field.optional(
            "rolls",
            "Rolls to measure a plug over",
            Kinds.WORK_SIZE,
            "6 mm, one each side on the plate that the small end stands on");
    static final Field<Length> HEIGHT =
            Field.optional("height", "Gauges under the rolls", Kinds.WORK_SIZE, "50 mm; gives the second reading");

    @Override
    public String name() {
        return "taper";
    }

    @Override
    public String title() {
        return "Taper";
    }

    @Override
    public String purpose() {
        return "Gives a taper in every way it is named and set: ratio, per foot, angle, compound slide, set-over, sine bar.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(
                LARGE,
                SMALL,
                LENGTH,
                RATIO,
                PER_FOOT,
                ANGLE,
                STANDARD,
                LARGE_BALL,
                SMALL_BALL,
                TOPS,
                WORK_LENGTH,
                BAR,
                ROLLS,
                HEIGHT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("ratio", "One in"),
                Result.always("perFoot", "Change of diameter in a foot").shownFine(),
                Result.always("angle", "Included angle"),
                Result.always("halfAngle", "Swing the compound slide by"),
                Result.sometimes("large", "Large end").shownFine(),
                Result.sometimes("small", "Small end").shownFine(),
                Result.sometimes("length", "Length of the taper"),
                Result.sometimes("setOver", "Set the tailstock over by").shownFine(),
                Result.sometimes("setOverAlongWork", "The same reckoned along the work as it lies askew")
                        .shownFine(),
                Result.sometimes("overRolls", "Over two rolls beside the small end, and raised by the gauges")
                        .shownFine(),
                Result.sometimes("sineBarStack", "Stack under the sine bar").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("two ends and a length", Map.of("large", "38 mm", "small", "25 mm", "length", "60 mm")),
                new Example("a taper pin's hole", Map.of("ratio", "1 in 48", "large", "1/2 in", "length", "2 in")),
                new Example("a machine taper on the sine bar", Map.of("standard", "MT 2", "bar", "5 in")),
                new Example("the tailstock set over", Map.of("perFoot", "1 in", "workLength", "9 in", "unit", "in")),
                new Example(
                        "a tapered hole by two balls",
                        Map.of("largeBall", "30 mm", "smallBall", "25 mm", "tops", "62 mm")),
                new Example(
                        "a plug over rolls",
                        Map.of("small", "25 mm", "angle", "3°", "rolls", "6 mm", "height", "50 mm")),
                new Example("an angle", Map.of("angle", "60°", "large", "40 mm", "small", "10 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Cone cone = new TaperQuestion(asked, working).cone();
        Taper taper = cone.taper();
        var answer = new Answer()
                .with("ratio", Figure.of(taper.oneIn()))
                .with("perFoot", Figure.of(taper.perFoot()))
                .with("angle", Figure.of(taper.included()))
                .with("halfAngle", Figure.of(taper.halfAngle()));
        var settings = new TaperSettings(taper, asked.unit(), working);
        settings.angles();
        cone.large().ifPresent(large -> answer.with("large", Figure.of(large)));
        cone.small().ifPresent(small -> answer.with("small", Figure.of(small)));
        cone.length().ifPresent(length -> answer.with("length", Figure.of(length)));
        asked.find(WORK_LENGTH)
                .ifPresent(whole -> answer.with("setOver", Figure.of(settings.setOver(whole)))
                        .with("setOverAlongWork", Figure.of(taper.setOverAlongWork(whole))));
        if (asked.has(HEIGHT) && !asked.has(ROLLS)) {
            throw Refusal.of(ROLLS, "are needed with the gauges under them.");
        }
        asked.find(ROLLS).ifPresent(rolls -> answer.with("overRolls", overRolls(rolls, cone, asked, working)));
        asked.find(BAR).ifPresent(bar -> answer.with("sineBarStack", Figure.of(settings.stack(bar))));
        return answer;
    }

    private static Figure overRolls(Length rolls, Cone cone, Asked asked, Working working) {
        Length small =
                cone.small().orElseThrow(() -> Refusal.of(SMALL, "is needed to say what a plug measures over rolls."));
        var over = new OverRolls(cone.taper(), small, rolls);
        if (!rolls.isPositive() || !over.touch()) {
            throw Refusal.of(ROLLS, "rolls are thicker than nothing, and this taper is too steep to lie against them.");
        }
        return over.figure(asked.find(HEIGHT), asked.unit(), working);
    }
}
