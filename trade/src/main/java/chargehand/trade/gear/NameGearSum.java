package chargehand.trade.gear;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Column;
import chargehand.trade.sum.Entry;
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
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which system an old wheel was cut to. */
@AutoService(Sum.class)
public final class NameGearSum implements Sum {
    private static final int MOST_SPANS = 4;
    private static final double FITS_BADLY = 9;
    private static final double SURE = 0.9;
    private static final Source RULE = Source.memory("Bayes' rule with normal scatter");

    private static final Kind<Length> ON_A_WHEEL = Kinds.where(
            Kinds.SIZE,
            size -> size.mm() >= 0.5 && size.mm() <= 10_000,
            "is not a size on a wheel that a shop can hold, from 0.5 mm to 10 m");
    private static final Column<Integer> OVER = Column.first("teeth", Kinds.count(1, 500));
    private static final Column<Length> SIZE = Column.then(":", "size", ON_A_WHEEL);

    private static final Field<Integer> TEETH =
            Field.required("teeth", "Teeth", Kinds.count(5, 1_000), "30, from 5 to 1000");
    private static final Field<Length> OUTSIDE =
            Field.required("outside", "Outside diameter", ON_A_WHEEL, "81.2 mm, over the tips");
    private static final Field<List<Entry>> SPAN = Field.optional(
            "span",
            "Span over teeth",
            Kinds.listOf(Kinds.entry("teeth and size over them", OVER, SIZE), MOST_SPANS),
            "4:27.4 mm, teeth and the calliper reading over them; two spans tell the angle: 3:19.7; 4:27.4");
    private static final Field<Length> SLACK = Field.optional(
            "slack",
            "How far a reading may be off",
            Kinds.where(
                    Kinds.SIZE,
                    slack -> slack.mm() >= 0.001 && slack.mm() <= 5,
                    "is not the slack of a reading, from 0.001 to 5 mm"),
            "0.05 mm",
            "0.05 mm for a calliper");

    @Override
    public String name() {
        return "name-gear";
    }

    @Override
    public String title() {
        return "Name a wheel";
    }

    @Override
    public String purpose() {
        return "Tells which pitch and pressure angle a spur wheel was most likely cut to, from what is measured on it.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(TEETH, OUTSIDE, SPAN, SLACK);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("candidates", "It may be"),
                Result.always("sure", "How sure"),
                Result.sometimes("tellApart", "What to measure next"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a change wheel", Map.of("teeth", "30", "outside", "81.2 mm", "span", "3:19.7; 4:27.4")),
                new Example("only the outside", Map.of("teeth", "48", "outside", "63.5 mm")),
                new Example(
                        "a small pinion drawn out", Map.of("teeth", "12", "outside", "30.0 mm", "span", "2:9.74 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        WheelReading reading = reading(asked);
        List<WheelCandidate> candidates = new WheelNaming(reading).candidates();
        if (candidates.isEmpty()) {
            throw Refusal.of(
                    OUTSIDE,
                    "no usual wheel of " + reading.teeth() + " teeth is near this size"
                            + (reading.spans().isEmpty() ? "." : " with these spans.") + " Count and measure again.");
        }
        write(candidates, reading, working, asked.unit());
        WheelCandidate first = candidates.getFirst();
        if (first.misfit() > FITS_BADLY) {
            working.caution("Nothing fits these readings well: count the teeth and measure again.");
        }
        working.caution("A guess until it runs with its mate; match the mate before cutting.");
        var answer = new Answer()
                .with(
                        "candidates",
                        Figure.many(candidates.stream().map(NameGearSum::group).toList()))
                .with("sure", Figure.of(sure(candidates)));
        tellApart(candidates, reading, asked.unit()).ifPresent(say -> answer.with("tellApart", Figure.of(say)));
        return answer;
    }

    private static WheelReading reading(Asked asked) {
        int teeth = asked.get(TEETH);
        List<WheelReading.Span> spans = asked.find(SPAN).orElse(List.of()).stream()
                .map(entry ->
                        new WheelReading.Span(entry.get(OVER), entry.get(SIZE).mm()))
                .toList();
        if (spans.stream().anyMatch(span -> span.over() >= teeth)) {
            throw Refusal.of(SPAN, "a span is over fewer teeth than the wheel has.");
        }
        return new WheelReading(
                teeth, asked.get(OUTSIDE).mm(), spans, asked.get(SLACK).mm());
    }

    private static void write(List<WheelCandidate> candidates, WheelReading reading, Working working, LengthUnit unit) {
        int teeth = reading.teeth();
        working.step(
                "Module of a full-depth wheel with this outside",
                "outside / (z + 2)",
                Figures.atMost(3, reading.outside()) + " / (" + teeth + " + 2)",
                Figures.atMost(4, reading.outside() / (teeth + 2)) + " mm, "
                        + Figures.four(ToothPitch.INCH * (teeth + 2) / reading.outside()) + " DP",
                Source.GEOMETRY);
        working.fact("Pitches looked through", WheelSystem.list().size() + " systems", WheelSystem.source());
        for (WheelCandidate candidate : candidates.subList(0, Math.min(3, candidates.size()))) {
            Spur wheel = candidate.system().wheel(teeth, candidate.shift());
            working.step(
                    candidate.say(),
                    "m (z + 2 ha + 2 x)",
                    Figures.atMost(4, wheel.module()) + " × (" + teeth + " + 2 × "
                            + candidate.system().teeth().addendum() + " + 2 × "
                            + Figures.atMost(2, candidate.shift()) + ")",
                    LengthText.both(Length.mm(wheel.outside()), unit) + " outside; " + percent(candidate.probability()),
                    RULE);
        }
    }

    private static Figure group(WheelCandidate candidate) {
        return new Answer()
                .with("system", Figure.of(candidate.system().name()))
                .with("pressureAngle", Figure.of(candidate.system().pressureAngle()))
                .with("shift", Figure.of(candidate.shift()))
                .with("outsideOff", Figure.of(Length.mm(candidate.outsideOff())))
                .with("probability", Figure.of(candidate.probability()))
                .asGroup();
    }

    private static String sure(List<WheelCandidate> candidates) {
        WheelCandidate first = candidates.getFirst();
        String how = first.probability() >= SURE ? "As good as certain: " : "Not sure: ";
        String next = candidates.size() > 1 && first.probability() < SURE
                ? "; next " + candidates.get(1).say()
                : "";
        return how + first.say() + ", " + percent(first.probability()) + next + ".";
    }

    private static Optional<String> tellApart(List<WheelCandidate> candidates, WheelReading reading, LengthUnit unit) {
        if (candidates.size() < 2) {
            return Optional.empty();
        }
        WheelCandidate a = candidates.get(0);
        WheelCandidate b = candidates.get(1);
        Spur one = a.system().wheel(reading.teeth(), a.shift());
        Spur other = b.system().wheel(reading.teeth(), b.shift());
        int over = one.bestOver();
        if (!one.spans(over) || !other.spans(over + 1)) {
            return Optional.of("Try it on a wheel known to be " + a.say() + ", then on one of " + b.say() + ".");
        }
        return Optional.of("Measure over " + over + " teeth and over " + (over + 1) + ": they differ by "
                + LengthText.in(Length.mm(one.span(over + 1) - one.span(over)), unit) + " on " + a.say() + ", by "
                + LengthText.in(Length.mm(other.span(over + 1) - other.span(over)), unit) + " on " + b.say()
                + "; over " + over + " teeth they read " + LengthText.in(Length.mm(one.span(over)), unit) + " and "
                + LengthText.in(Length.mm(other.span(over)), unit) + ".");
    }

    private static String percent(double probability) {
        return String.format(Locale.ROOT, "%.0f %%", probability * 100);
    }
}
