package chargehand.trade.spring;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.measure.SpringRate;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rate, stress and travel of a helical spring. */
@AutoService(Sum.class)
public final class SpringSum implements Sum {
    private static final Source AS_GIVEN = new Source("as given");
    private static final double TIGHTEST = 2.5;
    private static final double SLACKEST = 50;

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.05)) && !size.isMoreThan(Length.mm(2_000)),
            "must lie between 0.05 mm and 2 m");

    private static final Field<Length> WIRE = Field.required("wire", "Wire", SIZE, "3 mm");
    private static final Field<Length> MEAN = Field.optional("mean", "Mean diameter of the coil", SIZE, "24 mm");
    private static final Field<Length> OUTSIDE =
            Field.optional("outside", "Outside diameter", SIZE, "27 mm; or give the mean or the inside");
    private static final Field<Length> INSIDE =
            Field.optional("inside", "Inside diameter", SIZE, "21 mm; or give the mean or the outside");
    private static final Field<Ratio> COILS = Field.required(
            "coils",
            "Active coils",
            Kinds.where(
                    Kinds.NUMBER,
                    coils -> coils.value() >= 0.5 && coils.value() <= 1000,
                    "must lie between 1/2 and 1000"),
            "8: those free to give way");
    static final Field<SpringWire> MATERIAL = Field.optional(
            "material", "Wire of", SpringWire.KIND, "music wire", "music wire, stainless, phosphor bronze");
    private static final Field<Pressure> STIFFNESS = Field.optional(
            "stiffness",
            "Stiffness of the wire in torsion, G",
            Kinds.where(
                    Kinds.PRESSURE,
                    modulus -> modulus.megapascals() >= 1_000 && modulus.megapascals() <= 200_000,
                    "must lie between 1000 and 200000 MPa"),
            "79300 MPa from the wire's certificate; left out, that of the material");
    static final Field<Force> LOAD = Field.optional(
            "load",
            "Load",
            Kinds.where(
                    Kinds.FORCE, force -> force.newtons() > 0 && force.newtons() <= 1e7, "must be more than nothing"),
            "150 N; or give the deflection");
    static final Field<Length> DEFLECTION = Field.optional("deflection", "Deflection", SIZE, "20 mm; or give the load");
    static final Field<SpringEnds> ENDS = Field.optional(
            "ends", "Ends", Kinds.choice("ends", words()), "closed and ground", "plain, closed, closed and ground");
    static final Field<Length> FREE = Field.optional("free", "Free length", SIZE, "60 mm: tells whether it goes solid");

    @Override
    public String name() {
        return "spring";
    }

    @Override
    public String title() {
        return "Helical spring";
    }

    @Override
    public String purpose() {
        return "Gives the rate of a helical spring, the stress in its wire by Wahl, its travel and solid length.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(WIRE, MEAN, OUTSIDE, INSIDE, COILS, MATERIAL, STIFFNESS, LOAD, DEFLECTION, ENDS, FREE);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("rate", "Rate"),
                Result.always("index", "Index, mean diameter over wire"),
                Result.always("wahl", "Wahl's factor"),
                Result.always("solid", "Solid length"),
                Result.sometimes("load", "Load"),
                Result.sometimes("deflection", "Deflection"),
                Result.sometimes("stress", "Stress in the wire"),
                Result.sometimes("allowable", "Stress allowed under a steady load"),
                Result.sometimes("factor", "Allowed over actual stress"),
                Result.sometimes("solidLoad", "Load that brings it solid"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("under a load", Map.of("wire", "3 mm", "mean", "24 mm", "coils", "8", "load", "150 N")),
                new Example(
                        "a valve spring set in by so much",
                        Map.of(
                                "wire",
                                "1/8 in",
                                "outside",
                                "1 in",
                                "coils",
                                "6",
                                "deflection",
                                "3/8 in",
                                "free",
                                "1 3/4 in",
                                "material",
                                "stainless")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Spring spring = spring(asked);
        SpringWire wire = asked.find(STIFFNESS)
                .map(modulus -> asked.get(MATERIAL).withShearModulus(modulus))
                .orElseGet(() -> asked.get(MATERIAL));
        var steps = new SpringSteps(spring, asked, working);
        SpringRate rate = steps.rate(wire, asked.has(STIFFNESS) ? AS_GIVEN : SpringWire.source());
        Length solid = asked.get(ENDS).solid(spring.wire(), spring.active());
        steps.solid(solid);
        var answer = new Answer()
                .with("rate", Figure.of(rate))
                .with("index", Figure.of(spring.index()))
                .with("wahl", Figure.of(spring.wahl()))
                .with("solid", Figure.of(solid));
        steps.load(rate).ifPresent(load -> addLoad(load, rate, steps, wire, answer));
        steps.solidLoad(rate, solid).ifPresent(load -> answer.with("solidLoad", Figure.of(load)));
        working.caution(
                "A spring holds what was put into it: compress and let go with the right clamps, and keep out of its"
                        + " line. Often repeated loads need a lower stress than this.");
        return answer;
    }

    private static void addLoad(Force load, SpringRate rate, SpringSteps steps, SpringWire wire, Answer answer) {
        Pressure stress = steps.stress(load);
        answer.with("load", Figure.of(load))
                .with("deflection", Figure.of(Length.mm(load.newtons() / rate.newtonsPerMm())))
                .with("stress", Figure.of(stress));
        steps.allowed(wire).ifPresent(allowed -> {
            double factor = steps.factor(allowed, stress);
            answer.with("allowable", Figure.of(allowed)).with("factor", Figure.of(factor));
        });
    }

    private static Spring spring(Asked asked) {
        Length wire = asked.get(WIRE);
        Length mean = mean(asked, wire);
        double index = mean.over(wire);
        if (index < TIGHTEST || index > SLACKEST) {
            throw Refusal.of(
                    WIRE,
                    "the coil's mean diameter is " + Figures.four(index)
                            + " times the wire; the rule is good, and a spring can" + " be wound, between " + TIGHTEST
                            + " and " + Figures.four(SLACKEST) + " times.");
        }
        return new Spring(wire, mean, asked.get(COILS).value());
    }

    private static Length mean(Asked asked, Length wire) {
        List<Optional<Length>> given = List.of(
                asked.find(MEAN),
                asked.find(OUTSIDE).map(outside -> outside.minus(wire)),
                asked.find(INSIDE).map(inside -> inside.plus(wire)));
        List<Length> found = given.stream().flatMap(Optional::stream).toList();
        if (found.size() != 1) {
            throw Refusal.of(MEAN, "give one of the mean, outside or inside diameter.");
        }
        if (!found.getFirst().isPositive()) {
            throw Refusal.of(OUTSIDE, "the outside must be larger than the wire.");
        }
        return found.getFirst();
    }

    private static Map<String, SpringEnds> words() {
        var words = new LinkedHashMap<String, SpringEnds>();
        for (SpringEnds ends : SpringEnds.values()) {
            words.put(ends.word(), ends);
        }
        words.put("ground", SpringEnds.PLAIN_GROUND);
        words.put("squared", SpringEnds.CLOSED);
        words.put("squared and ground", SpringEnds.CLOSED_GROUND);
        return words;
    }
}
