package chargehand.trade.weight;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Mass;
import chargehand.measure.Volume;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a piece weighs. */
@AutoService(Sum.class)
public final class WeightSum implements Sum {
    private static final int MOST_SIZES = 3;
    private static final double CUBIC_MM_IN_CUBIC_M = 1e9;
    private static final double LIFTED_ALONE_KG = 25;

    private static final Field<Body> SHAPE = Field.required(
            "shape",
            "Shape",
            Kinds.choice("shape", words()),
            "round, tube, square, hexagon, octagon, flat, sphere or cone");
    private static final Field<List<Length>> SIZES = Field.required(
            "sizes", "Sizes", new SizesKind(MOST_SIZES), "25 mm x 1 m for a round; outside, inside, length for a tube");
    private static final Field<Material> MATERIAL =
            Field.required("material", "Material", MaterialKind.MATERIAL, "mild steel, LG2, brass");
    private static final Field<Integer> COUNT = Field.optional("count", "How many", Kinds.count(1, 100_000), "1", "12");

    @Override
    public String name() {
        return "weight";
    }

    @Override
    public String title() {
        return "Weight";
    }

    @Override
    public String purpose() {
        return "Gives the mass and volume of bars, tubes, blocks and other simple pieces.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SHAPE, SIZES, MATERIAL, COUNT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("mass", "Mass"),
                Result.always("volume", "Volume"),
                Result.sometimes("massAll", "Mass of all"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a bar", Map.of("shape", "round", "sizes", "50 mm x 1 m", "material", "mild steel")),
                new Example("a bush blank", Map.of("shape", "tube", "sizes", "3 in, 2 in, 4 in", "material", "LG2")),
                new Example(
                        "forty shims",
                        Map.of("shape", "flat", "sizes", "100 x 12 x 150", "material", "EN3", "count", "40")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Body body = asked.get(SHAPE);
        List<Length> sizes = asked.get(SIZES);
        refuseWrongSizes(body, sizes);
        double volume = body.volumeMm3(sizes);
        working.step(
                "Volume",
                body.formula(),
                sizes.stream()
                        .map(size -> LengthText.mm(size, LengthText.MICROMETRE))
                        .collect(Collectors.joining(", ")),
                Figures.four(volume / 1000) + " cm³",
                Source.GEOMETRY);
        Material material = asked.get(MATERIAL);
        double density = material.physical().kilogramsPerCubicMetre();
        working.fact(
                "Density of " + material.name(), Figures.four(density) + " kg/m³", Source.memory("handbook densities"));
        double mass = volume * density / CUBIC_MM_IN_CUBIC_M;
        working.step(
                "Mass",
                "volume × density",
                Figures.four(volume / 1000) + " cm³ × " + Figures.four(density / 1000) + " g/cm³",
                Figures.four(mass) + " kg",
                Source.GEOMETRY);
        int count = asked.get(COUNT);
        warn(mass, working);
        var answer = new Answer()
                .with("mass", Figure.of(Mass.kilograms(mass)))
                .with("volume", Figure.of(Volume.cubicMm(volume)));
        return count > 1 ? answer.with("massAll", Figure.of(Mass.kilograms(mass * count))) : answer;
    }

    private static void refuseWrongSizes(Body body, List<Length> sizes) {
        if (sizes.size() != body.count()) {
            throw Refusal.of(SIZES, "a " + body.word() + " is given by " + body.sizes() + ", in that order.");
        }
        boolean hollow = body == Body.TUBE;
        if (hollow && !sizes.get(1).isLessThan(sizes.getFirst())) {
            throw Refusal.of(SIZES, "the inside must be smaller than the outside: " + body.sizes() + ".");
        }
    }

    private static void warn(double mass, Working working) {
        if (mass > LIFTED_ALONE_KG) {
            working.caution("This is more than one person should lift: use the hoist, and slings rated for it.");
        }
    }

    private static Map<String, Body> words() {
        var words = new LinkedHashMap<String, Body>();
        for (Body body : Body.values()) {
            words.put(body.word(), body);
        }
        words.put("ring", Body.TUBE);
        words.put("hollow", Body.TUBE);
        words.put("hex", Body.HEXAGON);
        words.put("plate", Body.FLAT);
        words.put("block", Body.FLAT);
        words.put("ball", Body.SPHERE);
        return words;
    }
}
