package chargehand.trade.pin;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
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

/** Whether a pin through a shaft holds. */
@AutoService(Sum.class)
public final class PinSum implements Sum {
    private static final Source PINS = Source.published("machine design: a pin in double shear");
    private static final double IMPERIAL_TAPER = 48;

    private static final Field<PinKind> KIND =
            Field.required("kind", "Kind of pin", Kinds.choice("kind of pin", words()), "taper, dowel or split");
    private static final Field<PinSize> SIZE =
            Field.required("size", "Size of the pin", PinSize.KIND, "6 mm, 1/4 in, or No. 4 for a taper pin");
    private static final Field<Length> SHAFT = Field.required(
            "shaft",
            "Shaft diameter",
            Kinds.where(
                    Kinds.SIZE,
                    size -> !size.isLessThan(Length.mm(1)) && !size.isMoreThan(Length.mm(2_000)),
                    "must lie between 1 mm and 2 m"),
            "25 mm");
    private static final Field<Torque> TORQUE = Field.optional(
            "torque",
            "Torque",
            Kinds.where(
                    Kinds.TORQUE,
                    torque -> torque.newtonMetres() >= 0.001 && torque.newtonMetres() <= 1e6,
                    "must be more than nothing, and less than any pin holds"),
            "40 Nm; or give the thrust");
    private static final Field<Force> THRUST = Field.optional(
            "thrust",
            "Thrust along the shaft",
            Kinds.where(
                    Kinds.FORCE,
                    force -> force.newtons() >= 0.1 && force.newtons() <= 1e7,
                    "must be more than nothing, and less than any pin holds"),
            "5000 N; or give the torque");
    private static final Field<Material> MATERIAL =
            Field.optional("material", "Pin", MaterialKind.MATERIAL, "EN8", "EN8, silver steel, mild steel");

    @Override
    public String name() {
        return "pin";
    }

    @Override
    public String title() {
        return "Pin in shear";
    }

    @Override
    public String purpose() {
        return "Gives the stress in a taper pin, dowel or split pin through a shaft, and what it can hold.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(KIND, SIZE, SHAFT, TORQUE, THRUST, MATERIAL);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("shearStress", "Shear stress in the pin"),
                Result.always("bearingStress", "Pressure of the pin in the shaft"),
                Result.always("allowable", "Shear stress allowed"),
                Result.always("capacity", "What the pin may hold"),
                Result.always("factor", "Allowed over actual stress"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a collar held by a taper pin",
                        Map.of(
                                "kind",
                                "taper",
                                "size",
                                "No. 4",
                                "shaft",
                                "1 in",
                                "torque",
                                "40 Nm",
                                "material",
                                "EN8")),
                new Example(
                        "a dowel under thrust",
                        Map.of("kind", "dowel", "size", "6 mm", "shaft", "20 mm", "thrust", "5000 N")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        if (asked.has(TORQUE) == asked.has(THRUST)) {
            throw Refusal.of(TORQUE, "give either the torque or the thrust, one of the two.");
        }
        CrossPin pin = pin(asked, working);
        Pressure allowable = AllowableShear.of(asked.get(MATERIAL), working);
        var steps = new Loading(pin, allowable, working);
        Answer answer = asked.find(TORQUE).map(steps::torque).orElseGet(() -> steps.thrust(asked.get(THRUST)));
        if (asked.get(KIND) == PinKind.SPLIT) {
            working.caution("A split pin keeps a nut or a clevis pin from coming off; it is not meant to carry load.");
        }
        working.caution(
                "A pin's hole weakens the shaft. Where a failure could hurt someone the competent person decides.");
        return answer;
    }

    private static CrossPin pin(Asked asked, Working working) {
        PinSize size = asked.get(SIZE);
        Length shaft = asked.get(SHAFT);
        Length sheared =
                size.number().isPresent() ? size.diameter().minus(shaft.times(1 / IMPERIAL_TAPER)) : size.diameter();
        if (size.number().isPresent() && asked.get(KIND) != PinKind.TAPER) {
            throw Refusal.of(SIZE, "only taper pins are numbered: give this one's diameter.");
        }
        if (!sheared.isPositive() || !size.diameter().isLessThan(shaft.times(0.5))) {
            throw Refusal.of(
                    SIZE, "a pin through a shaft is thinner than half of it, a quarter to a third by common practice.");
        }
        size.number()
                .ifPresent(number -> working.step(
                        "Taper pin No. " + number + " where it leaves the shaft, 1 in 48 from its large end",
                        "d − D / 48",
                        LengthText.in(size.diameter(), asked.unit()) + " − " + LengthText.in(shaft, asked.unit())
                                + " / 48",
                        LengthText.both(sheared, asked.unit()),
                        PinSize.source()));
        return new CrossPin(sheared, asked.get(KIND).fill(), shaft);
    }

    private record Loading(CrossPin pin, Pressure allowable, Working working) {
        Answer torque(Torque torque) {
            Pressure shear = pin.shear(torque);
            area();
            working.step(
                    "Shear stress; two planes at the surface of the shaft share the torque",
                    "τ = T / (D A)",
                    Figures.four(torque.newtonMetres()) + " N·m / ("
                            + Figures.four(pin.shaft().mm()) + " × " + Figures.four(pin.areaMm2()) + ")",
                    Figures.four(shear.megapascals()) + " MPa",
                    PINS);
            return answer(shear, pin.bearing(torque), Figure.of(pin.torqueCapacity(allowable)));
        }

        Answer thrust(Force thrust) {
            Pressure shear = pin.shear(thrust);
            area();
            working.step(
                    "Shear stress; two planes share the thrust",
                    "τ = F / (2 A)",
                    Figures.four(thrust.newtons()) + " N / (2 × " + Figures.four(pin.areaMm2()) + ")",
                    Figures.four(shear.megapascals()) + " MPa",
                    PINS);
            return answer(shear, pin.bearing(thrust), Figure.of(pin.thrustCapacity(allowable)));
        }

        private void area() {
            working.step(
                    "Metal sheared at one plane",
                    pin.fill() < 1 ? "A = share × π d² / 4" : "A = π d² / 4",
                    (pin.fill() < 1 ? Figures.four(pin.fill()) + " × " : "") + "π × "
                            + Figures.four(pin.diameter().mm()) + "² / 4",
                    Figures.four(pin.areaMm2()) + " mm²",
                    Source.GEOMETRY);
        }

        private Answer answer(Pressure shear, Pressure bearing, Figure capacity) {
            double factor = allowable.megapascals() / shear.megapascals();
            working.step(
                    "How much is in hand",
                    "τa / τ",
                    Figures.four(allowable.megapascals()) + " / " + Figures.four(shear.megapascals()),
                    Figures.four(factor),
                    Source.COMMON_PRACTICE);
            if (factor < 1) {
                working.caution("The pin is too small for this load.");
            }
            return new Answer()
                    .with("shearStress", Figure.of(shear))
                    .with("bearingStress", Figure.of(bearing))
                    .with("allowable", Figure.of(allowable))
                    .with("capacity", capacity)
                    .with("factor", Figure.of(factor));
        }
    }

    private static Map<String, PinKind> words() {
        var words = new LinkedHashMap<String, PinKind>();
        for (PinKind kind : PinKind.values()) {
            words.put(kind.word(), kind);
        }
        return words;
    }
}
