package chargehand.trade.heat;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Temperature;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** How a size changes with temperature. */
@AutoService(Sum.class)
public final class ExpandSum implements Sum {
    private static final double HOT = 60;
    private static final double COLD = -20;
    private static final double TABLE_FROM = -20;
    private static final double TABLE_TO = 150;
    private static final double MILLION = 1e6;

    private static final Kind<Temperature> WARMTH = Kinds.where(
            Kinds.TEMPERATURE,
            temperature -> temperature.celsius() >= -200 && temperature.celsius() <= 600,
            "must lie between -200 and 600 °C, where the rule is good for something");

    private static final Field<Length> SIZE =
            Field.required("size", "Size", Kinds.WORK_SIZE, "100 mm, at the first temperature");
    private static final Field<Material> MATERIAL =
            Field.required("material", "Material", MaterialKind.MATERIAL, "EN8, LG2, cast iron");
    private static final Field<Temperature> FROM = Field.optional("from", "From", WARMTH, "20 °C", "20 °C, or 68 °F");
    private static final Field<Temperature> TO = Field.required("to", "To", WARMTH, "160 °C");

    @Override
    public String name() {
        return "expand";
    }

    @Override
    public String title() {
        return "Growth with heat";
    }

    @Override
    public String purpose() {
        return "Gives how a size changes between two temperatures.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SIZE, MATERIAL, FROM, TO);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("size", "Size at the second temperature").shownFine(),
                Result.always("change", "Change").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a hub warmed", Map.of("size", "50 mm", "material", "EN8", "from", "20 °C", "to", "190 °C")),
                new Example("a bush in a freezer", Map.of("size", "2 in", "material", "LG2", "to", "-20 °C")),
                new Example(
                        "measured while warm",
                        Map.of("size", "120.05 mm", "material", "aluminium", "from", "45", "to", "20")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Length size = asked.get(SIZE);
        Material material = asked.get(MATERIAL);
        double rate = material.physical().expansionPerKelvin();
        double rise = asked.get(TO).celsius() - asked.get(FROM).celsius();
        working.fact(
                "Growth of " + material.name() + " for each degree",
                Figures.four(rate * MILLION) + " millionths",
                Source.memory("handbook linear expansion, 20 to 100 °C"));
        Length change = size.times(rate * rise);
        working.step(
                "Change of size",
                "ΔL = L × α × (t2 − t1)",
                LengthText.in(size, asked.unit()) + " × " + Figures.four(rate * MILLION) + "/1000000 × ("
                        + said(asked.get(TO)) + " − " + said(asked.get(FROM)) + ")",
                LengthText.both(change, asked.unit()),
                Source.published("physics: linear expansion"));
        warn(asked, working);
        return new Answer().with("size", Figure.of(size.plus(change))).with("change", Figure.of(change));
    }

    private static void warn(Asked asked, Working working) {
        double least = Math.min(asked.get(FROM).celsius(), asked.get(TO).celsius());
        double most = Math.max(asked.get(FROM).celsius(), asked.get(TO).celsius());
        if (most > HOT || least < COLD) {
            working.caution("Work this hot or cold burns: gloves and tongs, and a place ready to put it down.");
        }
        if (most > TABLE_TO || least < TABLE_FROM) {
            working.caution("The figure for growth is that between 20 and 100 °C: far outside it, it is only a guide.");
        }
    }

    private static String said(Temperature temperature) {
        return Notations.TEMPERATURE.text(temperature, LengthUnit.MILLIMETRE);
    }
}
