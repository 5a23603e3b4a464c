package chargehand.trade.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** Packing under one jaw for an eccentric. */
@AutoService(Sum.class)
public final class PackingSum implements Sum {
    private static final Field<Length> THROW = Field.required(
            "throw",
            "Eccentricity",
            Kinds.WORK_SIZE,
            "5 mm: from the work's own axis to the new one; the stroke is twice that");
    private static final Field<Length> DIAMETER = Field.required("diameter", "Diameter held", Kinds.WORK_SIZE, "50 mm");
    private static final Field<Integer> JAWS = Field.optional(
            "jaws",
            "Jaws",
            Kinds.count(3, 3),
            "3",
            "3; in a four-jaw chuck the work is set by dial and needs no packing");

    @Override
    public String name() {
        return "packing";
    }

    @Override
    public String title() {
        return "Packing for an eccentric";
    }

    @Override
    public String purpose() {
        return "Gives the packing under one jaw of a three-jaw chuck that throws the work out by so much.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THROW, DIAMETER, JAWS);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("packing", "Packing").shownFine(),
                Result.always("approximate", "By the rule of one and a half times")
                        .shownFine(),
                Result.always("error", "The rule is too much by").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a cam", Map.of("throw", "5 mm", "diameter", "50 mm")),
                new Example("a small throw, in inches", Map.of("throw", "1/16 in", "diameter", "1 1/4 in")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Length eccentricity = asked.get(THROW);
        Length diameter = asked.get(DIAMETER);
        if (!ThreeJawPacking.reaches(eccentricity, diameter)) {
            throw Refusal.of(
                    THROW,
                    "thrown out this far the other two jaws miss the work: use a four-jaw chuck or a faceplate.");
        }
        Length exact = ThreeJawPacking.exact(eccentricity, diameter);
        Length rule = ThreeJawPacking.byRule(eccentricity);
        working.step(
                "Packing, the jaws touching at points",
                "t = 1.5 e − r + √(r² − 0.75 e²)",
                "1.5 × " + said(eccentricity, asked) + " − " + said(diameter.half(), asked) + " + √("
                        + said(diameter.half(), asked) + "² − 0.75 × " + said(eccentricity, asked) + "²)",
                LengthText.both(exact, asked.unit()),
                Source.GEOMETRY);
        working.step(
                "By the shop's rule",
                "1.5 e",
                "1.5 × " + said(eccentricity, asked),
                LengthText.both(rule, asked.unit()),
                Source.COMMON_PRACTICE);
        working.caution(
                "Broad jaws touch off their middle, so this is a first trial: dial the throw and correct the packing.");
        working.caution(
                "Work that runs out of balance shakes the lathe and can leave the chuck: hold it long and turn it"
                        + " slowly.");
        return new Answer()
                .with("packing", Figure.of(exact))
                .with("approximate", Figure.of(rule))
                .with("error", Figure.of(rule.minus(exact)));
    }

    private static String said(Length length, Asked asked) {
        return LengthText.figures(length, asked.unit());
    }
}
