package chargehand.trade;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Sums;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Asks a sum through its one door, as the page and the command do, and reads the figures of its answer. */
public final class Ask {
    private static final Sums SUMS = Sums.load();

    private final Outcome outcome;

    private Ask(Outcome outcome) {
        this.outcome = outcome;
    }

    /** Asks with field names and what is written in them by turns; bare numbers are millimetres. */
    public static Ask of(String sum, String... namesAndValues) {
        var written = new LinkedHashMap<String, String>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            written.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return new Ask(Asking.ask(SUMS.find(sum).orElseThrow(), written, LengthUnit.MILLIMETRE));
    }

    private Outcome.Answered answered() {
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        return (Outcome.Answered) outcome;
    }

    /** Checks that the ask was refused at this field with these words in it. */
    public void isRefusedAt(String field, String words) {
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        var refused = (Outcome.Refused) outcome;
        assertThat(refused.field()).isEqualTo(field);
        assertThat(refused.say()).contains(words);
    }

    /** The figure at a path of names parted by points; entries of a list go by number: {@code ways.0.error}. */
    public Figure figure(String path) {
        Figure figure = answered().answer().asGroup();
        for (String name : path.split("\\.", -1)) {
            figure = step(figure, name);
        }
        return figure;
    }

    private static Figure step(Figure figure, String name) {
        return switch (figure) {
            case Figure.Group group -> {
                assertThat(group.figures()).containsKey(name);
                yield Map.copyOf(group.figures()).get(name);
            }
            case Figure.Many many -> many.figures().get(Integer.parseInt(name));
            default -> throw new IllegalArgumentException("nothing called " + name + " inside " + figure);
        };
    }

    public boolean has(String name) {
        return answered().answer().figures().containsKey(name);
    }

    public Length length(String path) {
        return ((Figure.OfLength) figure(path)).length();
    }

    public double mm(String path) {
        return length(path).mm();
    }

    public double in(String path) {
        return length(path).in();
    }

    public double degrees(String path) {
        return ((Figure.OfAngle) figure(path)).angle().degrees();
    }

    public double megapascals(String path) {
        return ((Figure.OfPressure) figure(path)).pressure().megapascals();
    }

    public double newtonMetres(String path) {
        return ((Figure.OfTorque) figure(path)).torque().newtonMetres();
    }

    public double newtons(String path) {
        return ((Figure.OfForce) figure(path)).force().newtons();
    }

    public double watts(String path) {
        return ((Figure.OfPower) figure(path)).power().watts();
    }

    public double metresPerMinute(String path) {
        return ((Figure.OfSpeed) figure(path)).speed().metresPerMinute();
    }

    public double seconds(String path) {
        return ((Figure.OfTime) figure(path)).time().seconds();
    }

    public double number(String path) {
        return switch (figure(path)) {
            case Figure.Plain(var number) -> number;
            case Figure.Percent(var number) -> number;
            case Figure.PerMinute(var turns) -> turns;
            case Figure.Count(var count) -> count;
            case Figure other -> throw new IllegalArgumentException(path + " is no number but " + other);
        };
    }

    public String text(String path) {
        return ((Figure.Words) figure(path)).text();
    }

    public boolean yes(String path) {
        return ((Figure.YesNo) figure(path)).yes();
    }

    public List<Figure> many(String path) {
        return ((Figure.Many) figure(path)).figures();
    }

    /** The whole numbers of a list. */
    public List<Integer> counts(String path) {
        return many(path).stream()
                .map(figure -> Math.toIntExact(((Figure.Count) figure).count()))
                .toList();
    }

    public List<Step> working() {
        return answered().working();
    }

    public List<String> cautions() {
        return answered().cautions();
    }
}
