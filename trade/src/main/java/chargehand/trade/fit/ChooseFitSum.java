package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Unreadable;
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
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which fit a duty asks for. */
@AutoService(Sum.class)
public final class ChooseFitSum implements Sum {
    private static final Table TABLE = Table.read(ChooseFitSum.class, "duties.csv");

    private static final Field<Length> SIZE = Field.required("size", "Nominal size", Kinds.SIZE, "25 mm or 1 in");
    private static final Field<String> DUTY = Field.required(
            "duty", "Duty", Kinds.choice("duty", duties()), "running, sliding, location, light press, press or shrink");

    @Override
    public String name() {
        return "choose-fit";
    }

    @Override
    public String title() {
        return "Choosing a fit";
    }

    @Override
    public String purpose() {
        return "Names the usual ISO fits for a duty, hole basis, with their limits at this size.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SIZE, DUTY);
    }

    @Override
    public List<Result> results() {
        return List.of(Result.always("fits", "Fits, the usual one first").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a shaft in a plain bearing", Map.of("size", "40 mm", "duty", "running")),
                new Example("a dowel", Map.of("size", "3/8 in", "duty", "location")),
                new Example("a bush to stay in", Map.of("size", "32 mm", "duty", "press")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Length size = asked.get(SIZE);
        var fits = new ArrayList<Figure>();
        for (Row row : TABLE.rows()) {
            if (row.text("duty").equals(asked.get(DUTY))) {
                fits.add(figure(fit(size, row, working), row, asked, working));
            }
        }
        if (asked.get(DUTY).contains("press") || asked.get(DUTY).equals("shrink")) {
            working.caution(
                    "Whether the hub bears a press or shrink fit is a matter of its wall and material: ask press-fit"
                            + " before it is made, and stand clear of the line of the press.");
        }
        return new Answer().with("fits", Figure.many(fits));
    }

    private static Fit fit(Length size, Row row, Working working) {
        try {
            return new Fit(
                    Iso286.limits(size, ToleranceClass.parse(row.text("hole")), working),
                    Iso286.limits(size, ToleranceClass.parse(row.text("shaft")), working));
        } catch (Unreadable beyond) {
            throw Refusal.of(SIZE, beyond.say());
        }
    }

    private static Figure figure(Fit fit, Row row, Asked asked, Working working) {
        working.fact(
                row.text("hole") + "/" + row.text("shaft") + ": " + row.text("why"),
                "clearance " + LengthText.both(fit.clearanceMin(), asked.unit()) + " to "
                        + LengthText.both(fit.clearanceMax(), asked.unit()),
                TABLE.source());
        return new Answer()
                .with("hole", Figure.of(row.text("hole")))
                .with("shaft", Figure.of(row.text("shaft")))
                .with("why", Figure.of(row.text("why")))
                .with("source", Figure.of(TABLE.source().text()))
                .with("holeMax", Figure.of(fit.hole().limits().most()))
                .with("holeMin", Figure.of(fit.hole().limits().least()))
                .with("shaftMax", Figure.of(fit.shaft().limits().most()))
                .with("shaftMin", Figure.of(fit.shaft().limits().least()))
                .with("clearanceMax", Figure.of(fit.clearanceMax()))
                .with("clearanceMin", Figure.of(fit.clearanceMin()))
                .asGroup();
    }

    private static Map<String, String> duties() {
        var duties = new LinkedHashMap<String, String>();
        TABLE.rows().forEach(row -> duties.put(row.text("duty"), row.text("duty")));
        return duties;
    }
}
