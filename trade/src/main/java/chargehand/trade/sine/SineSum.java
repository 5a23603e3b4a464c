package chargehand.trade.sine;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The gauge stack for an angle on a sine bar. */
@AutoService(Sum.class)
public final class SineSum implements Sum {
    private static final double GOOD_TO_DEGREES = 45;

    /** Blocks that come no nearer than this do not make the angle. */
    private static final double MOST_OFF_DEGREES = 0.1;

    private static final Kind<Angle> TILT = Kinds.where(
            Kinds.ANGLE, angle -> angle.degrees() > 0 && angle.degrees() < 90, "must lie between 0° and 90°");

    private static final Field<Angle> ANGLE = Field.required("angle", "Angle", TILT, "27° 30'");
    private static final Field<Length> BAR = Field.required(
            "bar",
            "Sine bar, between rollers",
            Kinds.where(
                    Kinds.SIZE,
                    size -> !size.isMoreThan(Length.mm(1_000)) && !size.isLessThan(Length.mm(1)),
                    "is not the length of a sine bar, from 1 mm to 1 m"),
            "100 mm, 200 mm or 5 in");
    private static final Field<GaugeSet> SET = Field.optional(
            "set",
            "Gauge blocks",
            Kinds.choice("set of gauge blocks", Map.of("metric", GaugeSet.METRIC, "inch", GaugeSet.INCH)),
            "metric or inch; left out, that of the unit in use");

    @Override
    public String name() {
        return "sine";
    }

    @Override
    public String title() {
        return "Sine bar";
    }

    @Override
    public String purpose() {
        return "Gives the stack under a sine bar for an angle, the gauge blocks that make it, and how near it comes.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(ANGLE, BAR, SET);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("stack", "Stack under one roller").shownFine(),
                Result.sometimes("gauges", "Gauge blocks").shownFine(),
                Result.sometimes("angleError", "That stack is off by"),
                Result.always("perStep", "Angle for a thousandth of a millimetre"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("on a metric bar", Map.of("angle", "27° 30'", "bar", "100 mm")),
                new Example("on an inch bar", Map.of("angle", "5° 15'", "bar", "10 in", "set", "inch")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Angle angle = asked.get(ANGLE);
        Length bar = asked.get(BAR);
        Length stack = bar.times(angle.sin());
        if (!stack.isPositive()) {
            throw Refusal.of(ANGLE, "this angle is too small to set on a sine bar.");
        }
        LengthUnit unit = asked.unit();
        working.step(
                "Stack under one roller",
                "H = bar × sin α",
                LengthText.in(bar, unit) + " × sin " + AngleText.seconds(angle),
                LengthText.both(stack, unit),
                Source.GEOMETRY);
        double perMicron = Math.toDegrees(0.001 / (bar.mm() * angle.cos()));
        working.step(
                "How much a thousandth of a millimetre turns it",
                "Δα = Δh / (bar × cos α)",
                "0.001 mm / (" + LengthText.mm(bar, LengthText.MICROMETRE) + " × cos " + AngleText.degrees(angle, 4)
                        + ")",
                AngleText.degrees(Angle.degrees(perMicron), 6),
                Source.GEOMETRY);
        if (angle.degrees() > GOOD_TO_DEGREES) {
            working.caution("Above 45° a sine bar loses its accuracy: set it to what is left of 90°, from a square.");
        }
        var answer = new Answer().with("stack", Figure.of(stack));
        addGauges(answer, stack, asked, working);
        return answer.with("perStep", Figure.of(Angle.degrees(perMicron)));
    }

    private static void addGauges(Answer answer, Length stack, Asked asked, Working working) {
        GaugeSet set = asked.find(SET).orElse(asked.unit() == LengthUnit.INCH ? GaugeSet.INCH : GaugeSet.METRIC);
        Angle wanted = asked.get(ANGLE);
        Optional<List<Length>> blocks = set.stack(stack)
                .filter(found -> Math.abs(reached(found, asked).degrees() - wanted.degrees()) <= MOST_OFF_DEGREES);
        if (blocks.isEmpty()) {
            working.caution("The " + set.title() + " cannot make this stack: it is too small, or too large.");
            return;
        }
        Length made = blocks.get().stream().reduce(Length.ZERO, Length::plus);
        working.fact(
                "Gauge blocks from the " + set.title() + ", fewest that make it",
                blocks.get().stream()
                                .map(block -> LengthText.figures(block, asked.unit()))
                                .collect(Collectors.joining(" + "))
                        + " = " + LengthText.both(made, asked.unit()),
                Source.COMMON_PRACTICE);
        answer.with("gauges", Figure.many(blocks.get().stream().map(Figure::of).toList()))
                .with(
                        "angleError",
                        Figure.of(Angle.degrees(reached(blocks.get(), asked).degrees() - wanted.degrees())));
    }

    private static Angle reached(List<Length> blocks, Asked asked) {
        Length made = blocks.stream().reduce(Length.ZERO, Length::plus);
        return Angle.radians(Math.asin(Math.min(1, made.over(asked.get(BAR)))));
    }
}
