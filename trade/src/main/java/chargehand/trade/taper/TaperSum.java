package chargehand.trade.taper;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
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
    static final Field<Length> WORK_LENGTH = Field.optional(
            "workLength",
            "Whole length between centres",
            Kinds.WORK_SIZE,
            "250 mm; give it to have the tailstock's set-over");
    private static final Field<Length> BAR = Field.optional(
            "bar", "Sine bar, between rollers", Kinds.WORK_SIZE, "100 mm or 5 in; give it to have the stack");

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
        return List.of(LARGE, SMALL, LENGTH, RATIO, PER_FOOT, ANGLE, STANDARD, WORK_LENGTH, BAR);
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
                Result.sometimes("sineBarStack", "Stack under the sine bar").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("two ends and a length", Map.of("large", "38 mm", "small", "25 mm", "length", "60 mm")),
                new Example("a taper pin's hole", Map.of("ratio", "1 in 48", "large", "1/2 in", "length", "2 in")),
                new Example("a machine taper on the sine bar", Map.of("standard", "MT 2", "bar", "5 in")),
                new Example("the tailstock set over", Map.of("perFoot", "1 in", "workLength", "9 in", "unit", "in")),
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
        asked.find(WORK_LENGTH).ifPresent(whole -> answer.with("setOver", Figure.of(settings.setOver(whole))));
        asked.find(BAR).ifPresent(bar -> answer.with("sineBarStack", Figure.of(settings.stack(bar))));
        return answer;
    }
}
