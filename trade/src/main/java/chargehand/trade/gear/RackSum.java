package chargehand.trade.gear;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Notations;
import chargehand.measure.Ratio;
import chargehand.measure.Torque;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How far a pinion moves a rack, and how hard. */
@AutoService(Sum.class)
public final class RackSum implements Sum {
    private static final double MOST_TURNS = 1e6;
    private static final double MOST_FORCE = 1e7;
    private static final double LEAST_FORCE = 1e-6;

    private static final Field<Integer> TEETH =
            Field.required("teeth", "Teeth of the pinion", Kinds.count(5, 2_000), "18");
    private static final Field<Ratio> TURNS = Field.optional(
            "turns",
            "Turns of the pinion",
            Kinds.where(
                    Kinds.NUMBER,
                    turns -> turns.value() > 0 && turns.value() <= MOST_TURNS,
                    "must be more than no turn, and at most a million"),
            "2.5; or give the travel; left out, one turn");
    private static final Field<Length> TRAVEL =
            Field.optional("travel", "Travel of the rack", Kinds.WORK_SIZE, "200 mm; gives the turns");
    private static final Field<Torque> TORQUE = Field.optional(
            "torque",
            "Torque on the pinion",
            Kinds.where(
                    Kinds.TORQUE,
                    torque -> torque.newtonMetres() >= LEAST_FORCE && torque.newtonMetres() <= MOST_FORCE,
                    "must be more than nothing, and less than any pinion bears"),
            "40 Nm; or give effort and lever");
    private static final Field<Force> EFFORT = Field.optional(
            "effort",
            "Effort on the lever",
            Kinds.where(
                    Kinds.FORCE,
                    force -> force.newtons() >= LEAST_FORCE && force.newtons() <= MOST_FORCE,
                    "must be more than nothing, and less than any lever bears"),
            "150 N, with the lever");
    private static final Field<Length> LEVER =
            Field.optional("lever", "Lever or handwheel radius", Kinds.WORK_SIZE, "250 mm, with the effort");

    @Override
    public String name() {
        return "rack";
    }

    @Override
    public String title() {
        return "Rack and pinion";
    }

    @Override
    public String purpose() {
        return "Gives the travel of a rack for the turns of its pinion, and the force for its torque.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(
                TEETH,
                ToothPitch.DIAMETRAL,
                ToothPitch.MODULE,
                ToothPitch.CIRCULAR,
                TURNS,
                TRAVEL,
                TORQUE,
                LEVER,
                EFFORT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("travelPerTurn", "Travel in one turn"),
                Result.always("travel", "Travel"),
                Result.always("turns", "Turns"),
                Result.sometimes("torque", "Torque on the pinion"),
                Result.sometimes("force", "Force along the rack, without friction"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("two and a half turns", Map.of("teeth", "18", "module", "1.5", "turns", "2.5")),
                new Example(
                        "turns for a travel, with the pull on a lever",
                        Map.of(
                                "teeth",
                                "16",
                                "diametralPitch",
                                "10",
                                "travel",
                                "12 in",
                                "effort",
                                "150 N",
                                "lever",
                                "250 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        double module = ToothPitch.module(asked, working);
        int teeth = asked.get(TEETH);
        Length perTurn = Length.mm(Math.PI * module * teeth);
        working.step(
                "Travel in one turn, the length of the pitch circle",
                "π m z",
                "π × " + Figures.atMost(4, module) + " × " + teeth,
                LengthText.both(perTurn, asked.unit()),
                Source.GEOMETRY);
        double turns = turns(asked, perTurn, working);
        var answer = new Answer()
                .with("travelPerTurn", Figure.of(perTurn))
                .with("travel", Figure.of(asked.find(TRAVEL).orElseGet(() -> perTurn.times(turns))))
                .with("turns", Figure.of(turns));
        torque(asked, working).ifPresent(torque -> force(torque, module * teeth / 2, working, answer));
        return answer;
    }

    private static double turns(Asked asked, Length perTurn, Working working) {
        if (asked.has(TURNS) && asked.has(TRAVEL)) {
            throw Refusal.of(TURNS, "give the turns or the travel, not both.");
        }
        if (asked.has(TRAVEL)) {
            Length travel = asked.get(TRAVEL);
            double turns = travel.over(perTurn);
            working.step(
                    "Turns for the travel",
                    "travel / travel in one turn",
                    LengthText.in(travel, asked.unit()) + " / " + LengthText.in(perTurn, asked.unit()),
                    Figures.atMost(4, turns),
                    Source.GEOMETRY);
            return turns;
        }
        double turns = asked.find(TURNS).map(Ratio::value).orElse(1.0);
        if (turns * perTurn.mm() > Kinds.MOST_WORK.mm()) {
            throw Refusal.of(TURNS, "this many turns travel further than any rack is long.");
        }
        working.step(
                "Travel",
                "turns × travel in one turn",
                Figures.four(turns) + " × " + LengthText.in(perTurn, asked.unit()),
                LengthText.both(perTurn.times(turns), asked.unit()),
                Source.GEOMETRY);
        return turns;
    }

    private static Optional<Torque> torque(Asked asked, Working working) {
        boolean byLever = asked.has(EFFORT) || asked.has(LEVER);
        if (asked.has(TORQUE) && byLever) {
            throw Refusal.of(TORQUE, "the torque is given and could also be worked out: give one or the other.");
        }
        if (!byLever) {
            return asked.find(TORQUE);
        }
        Force effort = asked.get(EFFORT);
        Length lever = asked.get(LEVER);
        Torque torque = Torque.newtonMetres(effort.newtons() * lever.mm() / 1000);
        working.step(
                "Torque on the pinion",
                "effort × lever",
                Figures.four(effort.newtons()) + " N × " + Figures.four(lever.mm() / 1000) + " m",
                Notations.TORQUE.text(torque, asked.unit()),
                Source.GEOMETRY);
        return Optional.of(torque);
    }

    private static void force(Torque torque, double pitchRadius, Working working, Answer answer) {
        Force force = Force.newtons(torque.newtonMetres() * 1000 / pitchRadius);
        working.step(
                "Force along the rack",
                "T / r, r the pitch radius",
                Figures.four(torque.newtonMetres()) + " Nm / " + Figures.atMost(3, pitchRadius) + " mm",
                Figures.four(force.newtons()) + " N",
                Source.GEOMETRY);
        working.caution("Friction takes some of this force; whether teeth, pins and lever bear it is another sum.");
        answer.with("torque", Figure.of(torque)).with("force", Figure.of(force));
    }
}
