package chargehand.trade.weld;

import chargehand.measure.Angle;
import chargehand.measure.Area;
import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Mass;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.measure.Volume;
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

/** Throat, stress and metal of a weld. */
@AutoService(Sum.class)
public final class WeldSum implements Sum {
    private static final double STEEL_DENSITY = 7850e-9;
    private static final Pressure FILLET_ALLOWED = Pressure.megapascals(94);
    private static final Source PERMITTED = Source.published(
            "Bhandari, Design of Machine Elements, Example 8.2: fillet welds in mild steel, steady load");
    private static final Source WELDS = Source.published("machine design: stress on the throat of a weld");

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.1)) && !size.isMoreThan(Length.mm(100_000)),
            "must lie between 0.1 mm and 100 m");
    private static final Kind<Length> PLATE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.5)) && !size.isMoreThan(Length.mm(200)),
            "must lie between 0.5 and 200 mm");

    private static final Field<WeldKind> KIND = Field.required(
            "kind", "Kind of weld", Kinds.choice("kind of weld", words()), "fillet, single-v or double-v");
    private static final Field<Length> LEG = Field.optional("leg", "Leg of the fillet", PLATE, "6 mm");
    private static final Field<Length> THROAT =
            Field.optional("throat", "Throat of the fillet", PLATE, "4.2 mm; or give the leg");
    private static final Field<Length> THICKNESS =
            Field.optional("thickness", "Thickness of plate", PLATE, "10 mm, for a V");
    private static final Field<Angle> ANGLE = Field.optional(
            "angle",
            "Included angle of the V",
            Kinds.where(
                    Kinds.ANGLE,
                    angle -> angle.degrees() >= 10 && angle.degrees() <= 120,
                    "must lie between 10° and 120°"),
            "60°",
            "60°");
    private static final Field<Length> GAP = Field.optional(
            "gap",
            "Root gap",
            Kinds.where(
                    Kinds.LENGTH,
                    gap -> !gap.isNegative() && !gap.isMoreThan(Length.mm(20)),
                    "must lie between 0 and 20 mm"),
            "0 mm",
            "2 mm");
    private static final Field<Length> LENGTH =
            Field.optional("length", "Length of weld", SIZE, "100 mm; or the diameter it goes round");
    private static final Field<Force> LOAD = Field.optional(
            "load",
            "Load",
            Kinds.where(
                    Kinds.FORCE,
                    force -> force.newtons() >= 0.1 && force.newtons() <= 1e8,
                    "must be more than nothing"),
            "20 kN on the weld");
    private static final Field<Torque> TORQUE = Field.optional(
            "torque",
            "Torque",
            Kinds.where(
                    Kinds.TORQUE,
                    torque -> torque.newtonMetres() >= 0.001 && torque.newtonMetres() <= 1e7,
                    "must be more than nothing"),
            "200 Nm on a weld round a shaft");
    private static final Field<Length> DIAMETER =
            Field.optional("diameter", "Diameter it goes round", SIZE, "50 mm, for a weld all round a shaft");

    @Override
    public String name() {
        return "weld";
    }

    @Override
    public String title() {
        return "Weld";
    }

    @Override
    public String purpose() {
        return "Gives the throat of a weld, the stress on it, and the metal it takes.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(KIND, LEG, THROAT, THICKNESS, ANGLE, GAP, LENGTH, LOAD, TORQUE, DIAMETER);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("throat", "Throat"),
                Result.always("area", "Metal across the weld"),
                Result.always("volume", "Volume of metal"),
                Result.always("metal", "Mass of metal, in steel"),
                Result.sometimes("stress", "Stress on the throat"),
                Result.sometimes("allowable", "Stress usually allowed on a fillet in mild steel"),
                Result.sometimes("factor", "Allowed over actual stress"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a fillet under load",
                        Map.of("kind", "fillet", "leg", "6 mm", "length", "50 mm", "load", "20 kN")),
                new Example(
                        "a flange welded round a shaft",
                        Map.of("kind", "fillet", "leg", "8 mm", "diameter", "50 mm", "torque", "900 Nm")),
                new Example(
                        "a butt weld",
                        Map.of("kind", "single-v", "thickness", "10 mm", "gap", "2 mm", "length", "300 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        WeldSeam seam = seam(asked, working);
        Length length = length(asked);
        double volume = seam.areaMm2() * length.mm();
        working.step(
                "Metal, without any build-up above the plate",
                "V = area × length",
                Figures.four(seam.areaMm2()) + " mm² × " + mm(length),
                Figures.four(volume / 1000) + " cm³",
                Source.GEOMETRY);
        var answer = new Answer()
                .with("throat", Figure.of(seam.throat()))
                .with("area", Figure.of(Area.squareMm(seam.areaMm2())))
                .with("volume", Figure.of(Volume.cubicMm(volume)))
                .with("metal", Figure.of(Mass.kilograms(volume * STEEL_DENSITY)));
        stress(asked, seam, length, working).ifPresent(stress -> addStress(asked, stress, answer, working));
        working.caution(
                "A weld is only as good as its making. Where it holds pressure, lifts or carries people it is for a"
                        + " coded welder and the competent person. Shield eyes and skin, clear away what burns, mind the fumes.");
        return answer;
    }

    private static void addStress(Asked asked, Pressure stress, Answer answer, Working working) {
        answer.with("stress", Figure.of(stress));
        if (asked.get(KIND) != WeldKind.FILLET) {
            return;
        }
        double factor = FILLET_ALLOWED.megapascals() / stress.megapascals();
        working.step(
                "What is usually allowed over what there is",
                "τa / τ",
                Figures.four(FILLET_ALLOWED.megapascals()) + " / " + Figures.four(stress.megapascals()),
                Figures.four(factor),
                PERMITTED);
        answer.with("allowable", Figure.of(FILLET_ALLOWED)).with("factor", Figure.of(factor));
        if (factor < 1) {
            working.caution("The stress is more than is usually allowed: a longer weld or a larger leg.");
        }
    }

    private static WeldSeam seam(Asked asked, Working working) {
        WeldKind kind = asked.get(KIND);
        WeldSeam seam = switch (kind) {
            case FILLET -> fillet(asked);
            case SINGLE_V -> WeldSeam.singleV(thickness(asked), asked.get(ANGLE), asked.get(GAP));
            case DOUBLE_V -> WeldSeam.doubleV(thickness(asked), asked.get(ANGLE), asked.get(GAP));
        };
        working.step(
                "Throat",
                kind == WeldKind.FILLET ? "a = leg / √2" : "a = thickness",
                mm(kind == WeldKind.FILLET ? seam.throat().times(Math.sqrt(2)) : seam.throat())
                        + (kind == WeldKind.FILLET ? " / √2" : ""),
                LengthText.both(seam.throat(), asked.unit()),
                WELDS);
        working.step(
                "Metal across the weld",
                kind.areaFormula(),
                kind == WeldKind.FILLET
                        ? mm(seam.throat().times(Math.sqrt(2))) + "² / 2"
                        : "t = " + mm(seam.throat()) + ", α = "
                                + Figures.four(asked.get(ANGLE).degrees()) + "°, g = " + mm(asked.get(GAP)),
                Figures.four(seam.areaMm2()) + " mm²",
                Source.GEOMETRY);
        return seam;
    }

    private static WeldSeam fillet(Asked asked) {
        if (asked.has(LEG) == asked.has(THROAT)) {
            throw Refusal.of(LEG, "a fillet is given by its leg or its throat, one of the two.");
        }
        return asked.find(LEG).map(WeldSeam::filletByLeg).orElseGet(() -> WeldSeam.filletByThroat(asked.get(THROAT)));
    }

    private static Length thickness(Asked asked) {
        return asked.find(THICKNESS)
                .orElseThrow(() -> Refusal.of(THICKNESS, "a V needs the thickness of the plate, such as 10 mm."));
    }

    private static Length length(Asked asked) {
        return asked.find(LENGTH)
                .or(() -> asked.find(DIAMETER).map(round -> round.times(Math.PI)))
                .orElseThrow(() -> Refusal.of(LENGTH, "give the length of weld, or the diameter it goes all round."));
    }

    private static Optional<Pressure> stress(Asked asked, WeldSeam seam, Length length, Working working) {
        if (asked.has(LOAD) && asked.has(TORQUE)) {
            throw Refusal.of(LOAD, "give the load or the torque, one of the two.");
        }
        return asked.find(LOAD)
                .map(load -> byLoad(load, seam, length, working))
                .or(() -> asked.find(TORQUE).map(torque -> byTorque(torque, asked, seam, working)));
    }

    private static Pressure byLoad(Force load, WeldSeam seam, Length length, Working working) {
        double stress = load.newtons() / (seam.throat().mm() * length.mm());
        working.step(
                "Stress on the throat",
                "τ = F / (a L)",
                Figures.four(load.newtons()) + " / (" + mm(seam.throat()) + " × " + mm(length) + ")",
                Figures.four(stress) + " MPa",
                WELDS);
        return Pressure.megapascals(stress);
    }

    private static Pressure byTorque(Torque torque, Asked asked, WeldSeam seam, Working working) {
        Length diameter = asked.find(DIAMETER)
                .orElseThrow(() -> Refusal.of(DIAMETER, "a torque needs the diameter that the weld goes round."));
        double stress = 2000
                * torque.newtonMetres()
                / (Math.PI * diameter.mm() * diameter.mm() * seam.throat().mm());
        working.step(
                "Stress on the throat all round",
                "τ = 2 T / (π d² a)",
                "2 × " + Figures.four(torque.newtonMetres()) + " N·m / (π × " + mm(diameter) + "² × "
                        + mm(seam.throat()) + ")",
                Figures.four(stress) + " MPa",
                WELDS);
        return Pressure.megapascals(stress);
    }

    private static String mm(Length length) {
        return LengthText.mmFigures(length, LengthText.MICROMETRE);
    }

    private static Map<String, WeldKind> words() {
        var words = new LinkedHashMap<String, WeldKind>();
        for (WeldKind kind : WeldKind.values()) {
            words.put(kind.word(), kind);
        }
        words.put("single v", WeldKind.SINGLE_V);
        words.put("double v", WeldKind.DOUBLE_V);
        return words;
    }
}
