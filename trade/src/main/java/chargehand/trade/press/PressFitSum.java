package chargehand.trade.press;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.measure.Temperature;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** What a press or shrink fit holds and does. */
@AutoService(Sum.class)
public final class PressFitSum implements Sum {
    private static final Kind<Length> SIZE_KIND = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.5)) && !size.isMoreThan(Length.mm(5_000)),
            "must lie between 0.5 mm and 5 m");
    private static final Kind<Ratio> FRICTION_KIND = Kinds.where(
            Kinds.NUMBER, friction -> friction.value() > 0 && friction.value() <= 1, "must lie between 0 and 1");

    private static final Field<Length> SIZE = Field.required("size", "Diameter of the fit", SIZE_KIND, "50 mm");
    private static final Field<Length> INTERFERENCE = Field.required(
            "interference",
            "Interference on the diameter",
            Kinds.SIZE,
            "0.05 mm or 2 thou: shaft less bore of the hub");
    private static final Field<Length> HUB_OUTSIDE =
            Field.required("hubOutside", "Outside of the hub", SIZE_KIND, "100 mm");
    private static final Field<Length> BORE =
            Field.optional("bore", "Bore of the shaft", SIZE_KIND, "20 mm; leave it out if it is solid");
    private static final Field<Length> LENGTH = Field.required("length", "Length of the fit", SIZE_KIND, "60 mm");
    private static final Field<Material> HUB =
            Field.required("hubMaterial", "Hub", MaterialKind.MATERIAL, "EN8, PB1, cast iron");
    private static final Field<Material> SHAFT = Field.required("shaftMaterial", "Shaft", MaterialKind.MATERIAL, "EN8");
    private static final Field<Ratio> FRICTION =
            Field.optional("friction", "Friction", FRICTION_KIND, "0.12", "0.12 for clean steel pressed in oiled");

    @Override
    public String name() {
        return "press-fit";
    }

    @Override
    public String title() {
        return "Press and shrink fit";
    }

    @Override
    public String purpose() {
        return "Gives the grip of a press or shrink fit, the force to press it, the stress in hub and shaft, the heat to fit it.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SIZE, INTERFERENCE, HUB_OUTSIDE, BORE, LENGTH, HUB, SHAFT, FRICTION);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("pressure", "Pressure between them"),
                Result.always("force", "Force to press it in or out"),
                Result.always("torque", "Torque it holds"),
                Result.always("hubStress", "Hoop stress in the hub"),
                Result.always("shaftStress", "Hoop stress in the shaft, negative for compression"),
                Result.always("heatHubTo", "Heat the hub to"),
                Result.sometimes("hubFactor", "Strength of the hub over its stress"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a steel hub on a solid shaft",
                        Map.of(
                                "size",
                                "50 mm",
                                "interference",
                                "0.05 mm",
                                "hubOutside",
                                "100 mm",
                                "length",
                                "60 mm",
                                "hubMaterial",
                                "EN8",
                                "shaftMaterial",
                                "EN8")),
                new Example(
                        "a bronze bush in iron",
                        Map.of(
                                "size",
                                "1 1/2 in",
                                "interference",
                                "1.5 thou",
                                "hubOutside",
                                "3 in",
                                "bore",
                                "1 1/4 in",
                                "length",
                                "2 in",
                                "hubMaterial",
                                "cast iron",
                                "shaftMaterial",
                                "PB1")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        PressFit fit = fit(asked);
        var steps = new PressFitSteps(fit, asked, working);
        Pressure pressure = steps.pressure();
        Force force = steps.force(asked.get(LENGTH), asked.get(FRICTION).value());
        Torque torque = steps.torque(force);
        steps.stresses();
        Temperature heat = steps.heat(asked.get(HUB));
        var answer = new Answer()
                .with("pressure", Figure.of(pressure))
                .with("force", Figure.of(force))
                .with("torque", Figure.of(torque))
                .with("hubStress", Figure.of(fit.hubStress()))
                .with("shaftStress", Figure.of(fit.shaftStress()))
                .with("heatHubTo", Figure.of(heat));
        return answer.with("hubFactor", Figure.of(steps.hubFactor(asked.get(HUB))));
    }

    private static PressFit fit(Asked asked) {
        Length size = asked.get(SIZE);
        if (!size.isLessThan(asked.get(HUB_OUTSIDE))) {
            throw Refusal.of(HUB_OUTSIDE, "the hub must be larger outside than the fit.");
        }
        Length bore = asked.find(BORE).orElse(Length.ZERO);
        if (!bore.isLessThan(size)) {
            throw Refusal.of(BORE, "the bore must be smaller than the fit.");
        }
        if (asked.get(INTERFERENCE).over(size) > 0.01) {
            throw Refusal.of(
                    INTERFERENCE,
                    "this is more than a hundredth of the diameter, far beyond any press fit: give the difference of shaft and"
                            + " bore, such as " + LengthText.both(size.times(0.001), asked.unit()) + ".");
        }
        return new PressFit(
                size,
                asked.get(INTERFERENCE),
                asked.get(HUB_OUTSIDE),
                bore,
                asked.get(HUB).physical(),
                asked.get(SHAFT).physical());
    }
}
