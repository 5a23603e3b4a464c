package chargehand.trade.vessel;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.material.SteamFitness;
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
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadKinds;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stress in a wall under pressure. */
@AutoService(Sum.class)
public final class WallSum implements Sum {
    private static final Source CYLINDERS =
            Source.published("strength of materials: thin cylinders, Lamé's thick cylinders");
    private static final double MOST_FACTOR = 10;

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.5)) && !size.isMoreThan(Length.mm(10_000)),
            "must lie between 0.5 mm and 10 m");

    private static final Field<Length> INSIDE = Field.required("inside", "Inside diameter", SIZE, "25 mm");
    private static final Field<Length> OUTSIDE =
            Field.required("outside", "Outside diameter, or across flats of a hexagon", SIZE, "40 mm");
    private static final Field<Pressure> PRESSURE = Field.required(
            "pressure",
            "Pressure inside",
            Kinds.where(
                    Kinds.PRESSURE,
                    pressure -> pressure.megapascals() > 0 && pressure.megapascals() <= 1_000,
                    "must be more than nothing and at most 10000 bar"),
            "10 bar or 150 psi");
    private static final Field<Material> MATERIAL =
            Field.required("material", "Material", MaterialKind.MATERIAL, "LG2, EN3, 316");
    private static final Field<Ratio> TEST = Field.optional(
            "test",
            "Test pressure over working pressure",
            Kinds.where(
                    Kinds.NUMBER,
                    test -> test.value() >= 1 && test.value() <= MOST_FACTOR,
                    "must lie between 1 and 10"),
            "1.5",
            "1.5, or what the code for the vessel says");
    private static final Field<ScrewThread> THREAD = Field.optional(
            "thread", "Thread cut into the wall", ThreadKinds.THREAD, "G 1 outside or M30x2 inside: leaves less wall");

    @Override
    public String name() {
        return "wall";
    }

    @Override
    public String title() {
        return "Wall under pressure";
    }

    @Override
    public String purpose() {
        return "Gives the thinnest place of a tube or fitting, its hoop stress under pressure and what is in hand.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(INSIDE, OUTSIDE, PRESSURE, MATERIAL, TEST, THREAD);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("thinnest", "Thinnest wall").shownFine(),
                Result.always("hoopStress", "Greatest hoop stress"),
                Result.always("factor", "Strength over stress"),
                Result.always("testPressure", "Test pressure"),
                Result.always("factorAtTest", "Strength over stress in the test"),
                Result.always("caution", "Take care"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a bronze fitting with an outside thread",
                        Map.of(
                                "inside",
                                "20 mm",
                                "outside",
                                "33.25 mm",
                                "pressure",
                                "10 bar",
                                "material",
                                "LG2",
                                "thread",
                                "G 1")),
                new Example(
                        "a steel pipe",
                        Map.of(
                                "inside",
                                "200 mm",
                                "outside",
                                "210 mm",
                                "pressure",
                                "20 bar",
                                "material",
                                "mild steel")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Cylinder cylinder = cylinder(asked, working);
        Pressure pressure = asked.get(PRESSURE);
        Material material = asked.get(MATERIAL);
        double stress = hoop(cylinder, pressure, working);
        double strength = strength(material, working);
        double factor = strength / stress;
        double test = asked.get(TEST).value();
        working.step(
                "Strength over stress",
                "R / σ",
                Figures.four(strength) + " / " + Figures.four(stress),
                Figures.four(factor),
                material.strength().source());
        Pressure testPressure = Pressure.megapascals(pressure.megapascals() * test);
        working.step(
                "Test pressure",
                "test × p",
                Figures.four(test) + " × " + Figures.four(pressure.bar()) + " bar",
                Figures.four(testPressure.bar()) + " bar",
                Source.COMMON_PRACTICE);
        String caution = warn(material, factor / test, working);
        return new Answer()
                .with("thinnest", Figure.of(cylinder.wall()))
                .with("hoopStress", Figure.of(Pressure.megapascals(stress)))
                .with("factor", Figure.of(factor))
                .with("testPressure", Figure.of(testPressure))
                .with("factorAtTest", Figure.of(factor / test))
                .with("caution", Figure.of(caution));
    }

    private static Cylinder cylinder(Asked asked, Working working) {
        Length inside = asked.get(INSIDE);
        Length outside = asked.get(OUTSIDE);
        if (!inside.isLessThan(outside)) {
            throw Refusal.of(INSIDE, "the inside must be smaller than the outside.");
        }
        Cylinder plain = new Cylinder(inside, outside);
        Optional<ScrewThread> thread = asked.find(THREAD);
        Cylinder least = thread.map(cut -> threaded(plain, cut)).orElse(plain);
        working.step(
                thread.isPresent() ? "Thinnest wall, at the root of the thread" : "Thinnest wall",
                "t = (D − d) / 2",
                "(" + LengthText.in(least.outside(), asked.unit()) + " − " + LengthText.in(least.inside(), asked.unit())
                        + ") / 2",
                LengthText.both(least.wall(), asked.unit()),
                Source.GEOMETRY);
        return least;
    }

    /** The wall left by a thread: on the outside where its major diameter lies nearer that, else inside. */
    private static Cylinder threaded(Cylinder plain, ScrewThread thread) {
        Length offOutside = thread.major().minus(plain.outside()).abs();
        Length offInside = thread.minorInternal().minus(plain.inside()).abs();
        boolean isOutside = !offOutside.isMoreThan(offInside);
        Length inside = isOutside ? plain.inside() : Length.most(plain.inside(), thread.majorInternal());
        Length outside = isOutside ? Length.least(plain.outside(), thread.minor()) : plain.outside();
        if (!inside.isLessThan(outside)) {
            throw Refusal.of(THREAD, "this thread would cut right through the wall.");
        }
        return new Cylinder(inside, outside);
    }

    private static double hoop(Cylinder cylinder, Pressure pressure, Working working) {
        double stress = cylinder.hoopStress(pressure).megapascals();
        String numbers = Figures.four(pressure.megapascals());
        if (cylinder.isThin()) {
            working.step(
                    "Hoop stress; the wall is thinner than a twentieth of the bore",
                    "σ = p d / (2 t)",
                    numbers + " × " + Figures.four(cylinder.inside().mm()) + " / (2 × "
                            + Figures.four(cylinder.wall().mm()) + ")",
                    Figures.four(stress) + " MPa",
                    CYLINDERS);
            return stress;
        }
        working.step(
                "Hoop stress at the bore; the wall is thick, so by Lamé",
                "σ = p (D² + d²) / (D² − d²)",
                numbers + " × " + Figures.four(cylinder.atBore()),
                Figures.four(stress) + " MPa",
                CYLINDERS);
        return stress;
    }

    private static double strength(Material material, Working working) {
        boolean yields = material.strength().yield().isPresent();
        double strength = material.strength()
                .yield()
                .orElse(material.strength().tensile())
                .megapascals();
        working.fact(
                (yields ? "Yield or proof" : "Tensile") + " strength of " + material.name() + " at the least, cold",
                Figures.four(strength) + " MPa",
                material.strength().source());
        if (!yields) {
            working.caution(material.name() + " breaks without warning under pressure: it is not for this without the"
                    + " competent person's word.");
        }
        return strength;
    }

    private static String warn(Material material, double factorAtTest, Working working) {
        if (material.steam() == SteamFitness.NO) {
            working.caution(material.name() + " is not used for steam or hot water.");
        }
        if (factorAtTest < 1) {
            working.caution("The wall would give way in the test: it is too thin.");
        }
        String caution =
                "Pressure kills. This reckons a plain straight tube, cold and sound; corners, heat, corrosion and"
                        + " shock take more. The code for the vessel and the competent person or inspection body decide. Test with"
                        + " water, never with air.";
        working.caution(caution);
        return caution;
    }
}
