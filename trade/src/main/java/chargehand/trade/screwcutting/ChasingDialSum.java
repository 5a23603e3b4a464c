package chargehand.trade.screwcutting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.measure.Ratio;
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
import chargehand.trade.thread.ThreadKinds;
import com.google.auto.service.AutoService;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** At which marks of the chasing dial the nut may be closed. */
@AutoService(Sum.class)
public final class ChasingDialSum implements Sum {
    private static final int FINEST_TPI = 200;
    private static final int MOST_TEETH = 200;
    private static final int MOST_MARKS = 64;

    /** Past this many leadscrew threads no bed is long enough, and the figure is of no use. */
    private static final BigInteger MOST_BETWEEN = BigInteger.valueOf(10_000);

    private static final Source SOURCE =
            new Source("threading dial tables of lathe manuals; follows from common multiples");

    private static final Field<Ratio> TPI = Field.optional(
            "tpi",
            "Threads to the inch",
            Kinds.where(
                    Kinds.NUMBER,
                    tpi -> tpi.value() > 0 && tpi.value() <= FINEST_TPI,
                    "is not a number of threads to the inch, more than 0 and up to " + FINEST_TPI),
            "19 or 11 1/2; or give the pitch instead");
    private static final Field<Pitch> PITCH = Field.optional(
            "pitch",
            "Pitch or thread",
            ThreadKinds.LEAD,
            "1.5 mm, 19 tpi or G 3/8; or give threads to the inch instead");
    private static final Field<Pitch> LEADSCREW =
            Field.required("leadscrew", "Leadscrew", Kinds.PITCH, "8 tpi or 6 mm");
    private static final Field<Integer> TEETH =
            Field.required("dialTeeth", "Teeth on the dial's wheel", Kinds.count(1, MOST_TEETH), "16 or 32");
    private static final Field<Integer> MARKS = Field.required(
            "dialMarks", "Marks on the dial", Kinds.count(1, MOST_MARKS), "4 or 8, all of them, long and short");

    @Override
    public String name() {
        return "chasing-dial";
    }

    @Override
    public String title() {
        return "Chasing dial";
    }

    @Override
    public String purpose() {
        return "Says at which marks of the dial the leadscrew nut may be closed for the next cut of a thread.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(TPI, PITCH, LEADSCREW, TEETH, MARKS);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("engageAt", "Close the nut at"),
                Result.always("halfNutRule", "Why"),
                Result.sometimes("repeat", "Tool and groove meet again every").shownFine(),
                Result.sometimes("leadscrewThreads", "Leadscrew threads between"));
    }

    @Override
    public List<Example> examples() {
        Map<String, String> dial = Map.of("leadscrew", "8 tpi", "dialTeeth", "16", "dialMarks", "8");
        return List.of(
                new Example("19 threads to the inch", with(dial, "tpi", "19")),
                new Example("half a thread", with(dial, "tpi", "11 1/2")),
                new Example("a metric pitch on an imperial screw", with(dial, "pitch", "2.5 mm")));
    }

    private static Map<String, String> with(Map<String, String> dial, String field, String value) {
        var ask = new HashMap<>(dial);
        ask.put(field, value);
        return ask;
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Pitch lead = lead(asked);
        var dial = new ChasingDial(asked.get(LEADSCREW), asked.get(TEETH), asked.get(MARKS));
        BigInteger between = dial.threadsBetween(lead);
        ChasingDial.Closing closing = dial.closing(lead);
        working.step(
                "Lead and leadscrew come together after the least whole number of leadscrew threads",
                "k = top of (lead / leadscrew pitch) in lowest terms",
                Notations.PITCH.text(lead, asked.unit()) + " / " + Notations.PITCH.text(dial.leadscrew(), asked.unit())
                        + " = " + lead.mm().divide(dial.leadscrew().mm()),
                "k = " + between + " threads",
                SOURCE);
        var answer = new Answer()
                .with("engageAt", figure(closing))
                .with("halfNutRule", Figure.of(rule(closing, dial, between)));
        if (between.compareTo(MOST_BETWEEN) <= 0) {
            Length repeat = Length.mm(dial.leadscrew().inMm() * between.doubleValue());
            working.step(
                    "So tool and groove meet again every",
                    "k × leadscrew pitch",
                    between + " × " + LengthText.figures(dial.leadscrew().length(), asked.unit()),
                    LengthText.both(repeat, asked.unit()),
                    SOURCE);
            answer.with("repeat", Figure.of(repeat)).with("leadscrewThreads", Figure.of(between.longValueExact()));
        }
        working.step(
                "The dial comes round once in as many leadscrew threads as its wheel has teeth",
                "marks j with j × teeth / marks a multiple of k",
                "teeth " + dial.teeth() + ", marks " + dial.marks() + ", k " + between,
                words(closing),
                SOURCE);
        if (closing instanceof ChasingDial.Closing.KeepClosed) {
            working.caution(
                    "Run the lathe back with the nut closed and the tool clear; let the work stop before reversing.");
        }
        return answer;
    }

    private static Pitch lead(Asked asked) {
        if (asked.has(TPI) == asked.has(PITCH)) {
            throw Refusal.of(TPI, "give either threads to the inch or a pitch, one of the two.");
        }
        return asked.find(TPI).map(tpi -> Pitch.ofTpi(tpi.exact())).orElseGet(() -> asked.get(PITCH));
    }

    private static Figure figure(ChasingDial.Closing closing) {
        return switch (closing) {
            case ChasingDial.Closing.Anywhere anywhere -> Figure.of("any");
            case ChasingDial.Closing.AtMarks(var marks) -> Figure.counts(marks);
            case ChasingDial.Closing.KeepClosed keep -> Figure.of("keep the nut closed");
        };
    }

    private static String words(ChasingDial.Closing closing) {
        return switch (closing) {
            case ChasingDial.Closing.Anywhere anywhere -> "any place where it will close";
            case ChasingDial.Closing.AtMarks(var marks) ->
                marks.stream().map(String::valueOf).collect(Collectors.joining(", ", "marks ", ""));
            case ChasingDial.Closing.KeepClosed keep -> "keep the nut closed";
        };
    }

    private static String rule(ChasingDial.Closing closing, ChasingDial dial, BigInteger between) {
        return switch (closing) {
            case ChasingDial.Closing.Anywhere anywhere ->
                "The leadscrew's pitch is a whole number of leads: wherever the nut closes, the tool meets the groove.";
            case ChasingDial.Closing.AtMarks(var marks) ->
                "The tool meets the groove every " + between + " threads of the leadscrew, and the dial comes round in "
                        + dial.teeth() + ": start at mark " + dial.marks() + " and close the nut at " + words(closing)
                        + ".";
            case ChasingDial.Closing.KeepClosed keep ->
                "The tool meets the groove only every " + between
                        + " threads of the leadscrew, and the dial comes round in " + dial.teeth()
                        + ": no mark stays true. Keep the nut closed and run the lathe back.";
        };
    }
}
