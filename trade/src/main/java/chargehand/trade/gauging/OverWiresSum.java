package chargehand.trade.gauging;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadKinds;
import chargehand.trade.thread.ThreadLimits;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** The wires for a thread, and what the micrometer should read over them. */
@AutoService(Sum.class)
public final class OverWiresSum implements Sum {
    private static final Field<ScrewThread> THREAD =
            Field.required("thread", "Thread", ThreadKinds.THREAD, "M12, 1/2 BSW, 1/2-13 UNC, Tr 30x6");
    private static final Field<Length> WIRE = Field.optional(
            "wire", "Wire in hand", Kinds.SIZE, "1 mm or .04 in, the diameter of all three; left out, the best wire");
    private static final Field<Length> READING = Field.optional(
            "reading",
            "Micrometer reads",
            Kinds.SIZE,
            "12.41 mm, to find the effective diameter; left out, none taken");

    @Override
    public String name() {
        return "over-wires";
    }

    @Override
    public String title() {
        return "Thread over three wires";
    }

    @Override
    public String purpose() {
        return "Gives the wires that suit a thread and the size to measure over three of them.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THREAD, WIRE, READING);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("bestWire", "Best wire").shownFine(),
                Result.always("wireMin", "Smallest wire").shownFine(),
                Result.always("wireMax", "Largest wire").shownFine(),
                Result.always("wire", "Wire reckoned with").shownFine(),
                Result.always("over", "Over three wires, basic size").shownFine(),
                Result.always("wireConstant", "Over wires less effective diameter")
                        .shownFine(),
                Result.sometimes("overMax", "Over three wires, at most").shownFine(),
                Result.sometimes("overMin", "Over three wires, at least").shownFine(),
                Result.always("rake", "Wires stand higher for the helix by").shownFine(),
                Result.sometimes("effective", "Effective diameter as read").shownFine(),
                Result.sometimes("off", "Over basic size by, negative if under").shownFine());
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a metric thread with the best wire", Map.of("thread", "M12")),
                new Example("wires that are in the drawer", Map.of("thread", "1/2 BSW", "wire", ".05 in")),
                new Example("what a reading means", Map.of("thread", "M20", "wire", "1.5 mm", "reading", "20.62 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        ScrewThread thread = asked.get(THREAD);
        if (!ThreeWires.suits(thread)) {
            throw Refusal.of(
                    THREAD, "wires do not rest on the flanks of a square thread: measure its groove and diameters.");
        }
        var wires = new ThreeWires(thread);
        Length wire = asked.find(WIRE).orElseGet(wires::best);
        refuseUnsuitable(wires, wire, asked);
        var steps = new OverWiresSteps(thread, wires, asked.unit(), working);
        steps.wires();
        steps.over(wire);
        var answer = new Answer()
                .with("bestWire", Figure.of(wires.best()))
                .with("wireMin", Figure.of(wires.smallest()))
                .with("wireMax", Figure.of(wires.largest()))
                .with("wire", Figure.of(wire))
                .with("over", Figure.of(wires.over(wire)))
                .with("wireConstant", Figure.of(wires.constant(wire)));
        limits(thread, wires.constant(wire), answer);
        answer.with("rake", Figure.of(wires.rake(wire)));
        asked.find(READING).ifPresent(reading -> {
            steps.reading(reading, wire);
            Length effective = wires.effective(reading, wire);
            if (!effective.isMoreThan(thread.minor()) || !effective.isLessThan(thread.major())) {
                throw Refusal.of(
                        READING,
                        "over this wire the thread reads about " + LengthText.both(wires.over(wire), asked.unit())
                                + ": check the reading, the wire and the thread.");
            }
            answer.with("effective", Figure.of(effective)).with("off", Figure.of(effective.minus(thread.effective())));
        });
        return answer;
    }

    private static void refuseUnsuitable(ThreeWires wires, Length wire, Asked asked) {
        if (wire.isLessThan(wires.smallest()) || wire.isMoreThan(wires.largest())) {
            throw Refusal.of(
                    WIRE,
                    "a wire for this thread lies between " + LengthText.both(wires.smallest(), asked.unit()) + " and "
                            + LengthText.both(wires.largest(), asked.unit()) + "; the best is "
                            + LengthText.both(wires.best(), asked.unit()) + ".");
        }
    }

    private static void limits(ScrewThread thread, Length constant, Answer answer) {
        ThreadLimits.find(thread).flatMap(ThreadLimits::external).ifPresent(outside -> {
            outside.effective().most().ifPresent(most -> answer.with("overMax", Figure.of(most.plus(constant))));
            outside.effective().least().ifPresent(least -> answer.with("overMin", Figure.of(least.plus(constant))));
        });
    }
}
