package chargehand.trade.strength;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Power;
import chargehand.measure.Pressure;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.Torque;
import chargehand.measure.Volume;
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

/** Whether a shaft carries its torque. */
@AutoService(Sum.class)
public final class ShaftSum implements Sum {
    private static final double LEAST_TORQUE = 1e-9;
    private static final double MOST_FORCE = 1e8;
    private static final Length LEAST_SIZE = Length.mm(1);
    private static final Length MOST_SIZE = Length.mm(5_000);

    private static final Kind<Torque> MOMENT = Kinds.where(
            Kinds.TORQUE,
            torque -> torque.newtonMetres() >= LEAST_TORQUE && torque.newtonMetres() <= MOST_FORCE,
            "must be more than nothing, and less than any shaft in a shop carries");
    private static final Kind<Length> SIZE_KIND = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(LEAST_SIZE) && !size.isMoreThan(MOST_SIZE),
            "is not the size of a shaft, from 1 mm to 5 m");

    static final Field<Material> MATERIAL =
            Field.optional("material", "Material", MaterialKind.MATERIAL, "EN8; or give the allowable stress");
    static final Field<Pressure> ALLOWABLE = Field.optional(
            "allowable",
            "Allowable shear stress",
            Kinds.where(
                    Kinds.PRESSURE,
                    stress -> stress.megapascals() > 0 && stress.megapascals() <= 5_000,
                    "is not a stress that a shaft can be allowed"),
            "60 MPa; or give the material");
    static final Field<ShaftShape> SHAPE =
            Field.optional("shape", "Shape", ShaftShape.KIND, "round", "round, hollow, square, hexagon or flat");
    static final Field<Length> SIZE =
            Field.required("size", "Size", SIZE_KIND, "25 mm: the diameter, across flats, or the thickness of a flat");
    static final Field<Length> WIDTH = Field.optional("width", "Width of a flat", SIZE_KIND, "40 mm: its wider side");
    static final Field<Length> BORE = Field.optional("bore", "Bore", SIZE_KIND, "12 mm, for a hollow shaft");
    static final Field<Torque> TORQUE =
            Field.optional("torque", "Torque", MOMENT, "80 Nm; or give power and speed, or effort and lever");
    static final Field<Power> POWER = Field.optional(
            "power",
            "Power",
            Kinds.where(
                    Kinds.POWER,
                    power -> power.watts() > 0 && power.watts() <= MOST_FORCE,
                    "must be more than nothing, and less than any shaft in a shop carries"),
            "2 hp, with the speed");
    static final Field<SpindleSpeed> RPM = Field.optional(
            "rpm",
            "Speed",
            Kinds.where(
                    Kinds.SPINDLE_SPEED,
                    speed -> speed.rpm() >= 0.01 && speed.rpm() <= 1e6,
                    "must lie between 0.01 and 1000000 rpm"),
            "350 rpm, with the power");
    static final Field<Force> EFFORT = Field.optional(
            "effort",
            "Effort",
            Kinds.where(
                    Kinds.FORCE,
                    force -> force.newtons() > 0 && force.newtons() <= MOST_FORCE,
                    "must be more than nothing, and less than any lever in a shop bears"),
            "300 N, with the lever");
    static final Field<Length> LEVER = Field.optional("lever", "Lever", Kinds.WORK_SIZE, "400 mm, with the effort");
    static final Field<Torque> BENDING =
            Field.optional("bending", "Bending moment", MOMENT, "40 Nm, if something also bends the shaft");
    static final Field<Boolean> KEYED = Field.optional("keyed", "Keyway cut in it", Kinds.YES_NO, "no", "yes or no");

    @Override
    public String name() {
        return "shaft";
    }

    @Override
    public String title() {
        return "Shaft in torsion";
    }

    @Override
    public String purpose() {
        return "Gives the stress and twist of a shaft under torque and bending, and how much is in hand.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(
                MATERIAL, ALLOWABLE, SHAPE, SIZE, WIDTH, BORE, TORQUE, POWER, RPM, EFFORT, LEVER, BENDING, KEYED);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("torque", "Torque on the shaft"),
                Result.always("shearStress", "Greatest shear stress"),
                Result.always("allowable", "Allowable shear stress"),
                Result.always("factor", "Allowable over actual stress"),
                Result.always("torqueCapacity", "Torque it may carry"),
                Result.always("twistPerLength", "Twist in a metre of its length"),
                Result.always("torsionModulus", "Torsion modulus, torque over stress"),
                Result.always("torsionConstant", "Torsion constant in mm⁴, torque over stiffness and twist"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a spindle turned by hand",
                        Map.of("material", "EN8", "size", "25 mm", "effort", "300 N", "lever", "400 mm")),
                new Example(
                        "a keyed countershaft",
                        Map.of(
                                "material",
                                "EN3",
                                "size",
                                "1 1/4 in",
                                "power",
                                "3 hp",
                                "rpm",
                                "350",
                                "bending",
                                "60 Nm",
                                "keyed",
                                "yes")),
                new Example(
                        "a squared valve spindle",
                        Map.of("material", "431", "shape", "square", "size", "16 mm", "torque", "50 Nm")),
                new Example(
                        "a flat spanner blade",
                        Map.of(
                                "material",
                                "EN8",
                                "shape",
                                "flat",
                                "size",
                                "8 mm",
                                "width",
                                "30 mm",
                                "torque",
                                "20 Nm")),
                new Example(
                        "a hollow shaft to a stated stress",
                        Map.of(
                                "allowable",
                                "60 MPa",
                                "shape",
                                "hollow",
                                "size",
                                "40 mm",
                                "bore",
                                "20 mm",
                                "torque",
                                "400 Nm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        var question = new ShaftQuestion(asked, working);
        Section section = question.section();
        ShaftLoad load = question.load();
        Pressure allowable = question.allowable();
        question.refuseHopeless(section, load, allowable);
        question.refuseBendingAlone(section, load, allowable);
        ShaftStress stress = ShaftStress.of(section, load, allowable, question.stiffness(), working);
        double factor = allowable.megapascals() / stress.shear().megapascals();
        working.step(
                "How much is in hand",
                "τa / τ",
                Figures.four(allowable.megapascals()) + " / "
                        + Figures.four(stress.shear().megapascals()),
                Figures.four(factor),
                Source.COMMON_PRACTICE);
        warn(factor, working);
        return new Answer()
                .with("torque", Figure.of(load.torque()))
                .with("shearStress", Figure.of(stress.shear()))
                .with("allowable", Figure.of(allowable))
                .with("factor", Figure.of(factor))
                .with("torqueCapacity", Figure.of(stress.capacity()))
                .with("twistPerLength", Figure.of(stress.twistPerMetre()))
                .with("torsionModulus", Figure.of(Volume.cubicMm(section.torsionModulusMm3())))
                .with("torsionConstant", Figure.of(section.torsionConstantMm4()));
    }

    private static void warn(double factor, Working working) {
        working.caution(
                "This reckons steady loads on a sound shaft of the size given. Steps, grooves, cracks, shock and"
                        + " reversal weaken it; where a failure could hurt someone the competent person decides.");
        if (factor < 1) {
            working.caution("The stress is more than is allowed: the shaft is too small for this load.");
        }
    }
}
