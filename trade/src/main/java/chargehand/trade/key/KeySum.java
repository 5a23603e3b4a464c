package chargehand.trade.key;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.strength.AllowableShear;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The key for a shaft and whether it carries the torque. */
@AutoService(Sum.class)
public final class KeySum implements Sum {
    private static final Source KEYS = Source.published("machine design, sunk keys: τ = F/(b L), σ = 2F/(h L)");

    /** Crushing is allowed twice what shear is (common practice). */
    private static final double CRUSHING_OVER_SHEAR = 2;

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isLessThan(Length.mm(0.5)) && !size.isMoreThan(Length.mm(2_000)),
            "must lie between 0.5 mm and 2 m");

    private static final Field<Length> SHAFT = Field.required("shaft", "Shaft diameter", SIZE, "30 mm");
    private static final Field<Torque> TORQUE = Field.required(
            "torque",
            "Torque",
            Kinds.where(
                    Kinds.TORQUE,
                    torque -> torque.newtonMetres() >= 0.001 && torque.newtonMetres() <= 1e6,
                    "must be more than nothing, and less than any key carries"),
            "250 Nm");
    private static final Field<Length> HUB_LENGTH = Field.optional("hubLength", "Length of the hub", SIZE, "40 mm");
    private static final Field<Length> LENGTH = Field.optional(
            "length", "Working length of the key", SIZE, "35 mm: its straight part, if shorter than the hub");
    private static final Field<Material> MATERIAL =
            Field.optional("material", "Key", MaterialKind.MATERIAL, "EN8", "EN8 or mild steel");
    private static final Field<KeySize.Standard> STANDARD = Field.optional(
            "standard",
            "Standard",
            Kinds.choice("standard", Map.of("metric", KeySize.Standard.METRIC, "imperial", KeySize.Standard.IMPERIAL)),
            "metric or imperial; left out, that of the unit in use");

    @Override
    public String name() {
        return "key";
    }

    @Override
    public String title() {
        return "Key and keyway";
    }

    @Override
    public String purpose() {
        return "Gives the standard key and keyways for a shaft, the stress in the key and the length it needs.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SHAFT, TORQUE, HUB_LENGTH, LENGTH, MATERIAL, STANDARD);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("width", "Width of the key"),
                Result.always("height", "Height of the key"),
                Result.always("keywayShaft", "Depth of keyway in the shaft"),
                Result.always("keywayHub", "Depth of keyway in the hub"),
                Result.always("shear", "Shear stress in the key"),
                Result.always("crushing", "Crushing stress on its side"),
                Result.always("shearAllowed", "Shear stress allowed"),
                Result.always("crushingAllowed", "Crushing stress allowed"),
                Result.always("lengthNeeded", "Working length needed"),
                Result.always("sound", "Long enough"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a metric shaft",
                        Map.of("shaft", "30 mm", "torque", "250 Nm", "hubLength", "40 mm", "material", "EN8")),
                new Example(
                        "an inch shaft",
                        Map.of(
                                "shaft",
                                "1 1/4 in",
                                "torque",
                                "100 lbf ft",
                                "hubLength",
                                "2 in",
                                "material",
                                "mild steel",
                                "standard",
                                "imperial")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        KeySize key = key(asked, working);
        Length length = length(asked);
        KeyLoad load = KeyLoad.of(asked.get(TORQUE), asked.get(SHAFT), key);
        write(load, length, asked, working);
        Pressure shear = AllowableShear.of(asked.get(MATERIAL), working);
        Pressure crushing = Pressure.megapascals(CRUSHING_OVER_SHEAR * shear.megapascals());
        working.fact(
                "Crushing allowed, twice the shear",
                Figures.four(crushing.megapascals()) + " MPa",
                Source.COMMON_PRACTICE);
        Length needed = needed(load, shear, crushing, asked, working);
        warn(needed, length, working);
        return new Answer()
                .with("width", Figure.of(key.width()))
                .with("height", Figure.of(key.height()))
                .with("keywayShaft", Figure.of(key.shaftDepth()))
                .with("keywayHub", Figure.of(key.hubDepth()))
                .with("shear", Figure.of(load.shear(length)))
                .with("crushing", Figure.of(load.crushing(length)))
                .with("shearAllowed", Figure.of(shear))
                .with("crushingAllowed", Figure.of(crushing))
                .with("lengthNeeded", Figure.of(needed))
                .with("sound", Figure.of(!needed.isMoreThan(length)));
    }

    private static KeySize key(Asked asked, Working working) {
        KeySize.Standard standard = asked.find(STANDARD)
                .orElse(asked.unit() == LengthUnit.INCH ? KeySize.Standard.IMPERIAL : KeySize.Standard.METRIC);
        KeySize key = KeySize.find(standard, asked.get(SHAFT))
                .orElseThrow(() -> Refusal.of(
                        SHAFT,
                        standard == KeySize.Standard.METRIC
                                ? "metric keys are tabled for shafts over 6 up to 230 mm."
                                : "imperial keys are tabled for shafts over 1/4 up to 4 in."));
        working.fact(
                "Key of the " + standard.word() + " standard for this shaft",
                LengthText.in(key.width(), asked.unit()) + " wide, " + LengthText.in(key.height(), asked.unit())
                        + " high",
                KeySize.source());
        return key;
    }

    private static Length length(Asked asked) {
        Optional<Length> hub = asked.find(HUB_LENGTH);
        Optional<Length> key = asked.find(LENGTH);
        if (hub.isEmpty() && key.isEmpty()) {
            throw Refusal.of(HUB_LENGTH, "give the length of the hub or of the key.");
        }
        return key.isEmpty()
                ? hub.get()
                : hub.map(length -> Length.least(length, key.get())).orElse(key.get());
    }

    private static void write(KeyLoad load, Length length, Asked asked, Working working) {
        String force = Figures.four(load.force().newtons());
        working.step(
                "Force at the surface of the shaft",
                "F = 2 T / d",
                "2 × " + Figures.four(asked.get(TORQUE).newtonMetres()) + " N·m / "
                        + LengthText.mm(asked.get(SHAFT), LengthText.MICROMETRE),
                force + " N",
                KEYS);
        working.step(
                "Shear stress along the key",
                "τ = F / (b L)",
                force + " / (" + mm(load.key().width()) + " × " + mm(length) + ")",
                Figures.four(load.shear(length).megapascals()) + " MPa",
                KEYS);
        working.step(
                "Crushing stress on half the height",
                "σ = 2 F / (h L)",
                "2 × " + force + " / (" + mm(load.key().height()) + " × " + mm(length) + ")",
                Figures.four(load.crushing(length).megapascals()) + " MPa",
                KEYS);
    }

    private static Length needed(KeyLoad load, Pressure shear, Pressure crushing, Asked asked, Working working) {
        Length needed = load.lengthNeeded(shear, crushing);
        working.step(
                "Working length needed, the longer of the two",
                "L = F / (b τa) or 2 F / (h σa)",
                Figures.four(load.force().newtons()) + " N over "
                        + mm(load.key().width()) + " × "
                        + Figures.four(shear.megapascals()) + " or half "
                        + mm(load.key().height()) + " × "
                        + Figures.four(crushing.megapascals()),
                LengthText.both(needed, asked.unit()),
                KEYS);
        return needed;
    }

    private static void warn(Length needed, Length length, Working working) {
        if (needed.isMoreThan(length)) {
            working.caution("The key is too short for this torque: a longer hub, a second key, or a stronger key.");
        }
        working.caution(
                "The length is that of the straight part: a key with round ends is longer by its width. A keyway"
                        + " weakens the shaft: ask shaft with it as well. Guard keys that stand out of turning shafts.");
    }

    private static String mm(Length length) {
        return LengthText.mmFigures(length, LengthText.MICROMETRE);
    }
}
