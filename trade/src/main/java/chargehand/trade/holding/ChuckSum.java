package chargehand.trade.holding;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
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
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Whether toothed or flatted work can sit true in a self-centring chuck. */
@AutoService(Sum.class)
public final class ChuckSum implements Sum {
    /** Width of a space at the tips over the pitch there, about that of full-depth involute teeth. */
    private static final double GAP_SHARE = 0.75;

    /** Pointed teeth or spaces closed up cannot be held or told apart. */
    private static final double MOST_GAP = 0.98;

    private static final double LEAST_GAP = 0.02;

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> size.mm() >= 0.1 && size.mm() <= 5_000,
            "is not a size on work in a chuck, from 0.1 mm to 5 m");

    static final Field<Integer> JAWS =
            Field.optional("jaws", "Jaws that close together", Kinds.choice("jaws", jaws()), "3", "3, 4 or 6");
    static final Field<Integer> TEETH =
            Field.optional("teeth", "Teeth", Kinds.count(3, 400), "25; or give the sides of flatted work");
    static final Field<Integer> SIDES =
            Field.optional("sides", "Flats", Kinds.count(3, 60), "6 for a hexagon; or give the teeth");
    static final Field<Length> OUTSIDE =
            Field.required("outside", "Outside", SIZE, "50 mm: over the tips of teeth, or across corners of flats");
    static final Field<Length> ROOT =
            Field.optional("root", "Root diameter", SIZE, "45 mm; left out, that of full-depth teeth");
    static final Field<Length> JAW_WIDTH =
            Field.required("jawWidth", "Width of a jaw's face", SIZE, "6 mm, where it touches the work");
    static final Field<Length> GAP = Field.optional(
            "gap", "Width of a space at the tips", SIZE, "4.5 mm; left out, three quarters of the pitch there");

    private static final Field<List<OwnedHolding>> OWNED = Field.optional(
            "owned",
            "Holdings owned",
            Kinds.listOf(Kinds.choice("holding", OwnedHolding.words()), 20),
            OwnedHolding.hint() + "; left out, all of them are named");

    @Override
    public String name() {
        return "chuck";
    }

    @Override
    public String title() {
        return "Teeth or flats in a chuck";
    }

    @Override
    public String purpose() {
        return "Tells whether toothed or flatted work can sit true in a self-centring chuck, and what to use if not.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(JAWS, TEETH, SIDES, OUTSIDE, ROOT, JAW_WIDTH, GAP, OWNED);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("evenly", "Can all jaws bear alike"),
                Result.always("runoutLeast", "Least run-out on the dial, turned the best way")
                        .shownFine(),
                Result.always("runoutMost", "Most run-out on the dial, turned the worst way")
                        .shownFine(),
                Result.always("why", "Why"),
                Result.always("instead", "Use instead"),
                Result.sometimes("notOwned", "Would do too, but is not owned"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a 25-tooth pinion in three jaws", Map.of("teeth", "25", "outside", "54 mm", "jawWidth", "8")),
                new Example(
                        "a 24-tooth wheel in three jaws", Map.of("teeth", "24", "outside", "52 mm", "jawWidth", "8")),
                new Example(
                        "a coarse spline that a jaw drops into",
                        Map.of(
                                "teeth",
                                "8",
                                "outside",
                                "38 mm",
                                "root",
                                "32 mm",
                                "gap",
                                "9 mm",
                                "jawWidth",
                                "6",
                                "jaws",
                                "3")),
                new Example(
                        "a square in three jaws",
                        Map.of("sides", "4", "outside", "1 in", "jawWidth", "6", "jaws", "3")),
                new Example(
                        "a pinion, in a shop with a three-jaw, a four-jaw and mandrels",
                        Map.of(
                                "teeth",
                                "26",
                                "outside",
                                "56 mm",
                                "jawWidth",
                                "8",
                                "owned",
                                "three-jaw, four-jaw, mandrel")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Held held = Held.of(asked, working);
        int jaws = asked.get(JAWS);
        Chucking chucking = Chucking.of(held.outline(), jaws, held.jawWidth());
        way("Jaws stop, turned the best way", chucking.best(), working);
        way("Jaws stop, turned the worst way", chucking.worst(), working);
        runout("Least run-out", chucking.best().seat().least(), asked, working);
        runout("Most run-out", chucking.worst().seat().most(), asked, working);
        warn(held, jaws, chucking, working);
        var answer = new Answer()
                .with("evenly", Figure.of(chucking.isEven()))
                .with("runoutLeast", Figure.of(Length.mm(chucking.runoutLeast())))
                .with("runoutMost", Figure.of(Length.mm(chucking.runoutMost())))
                .with("why", Figure.of(held.why(jaws, chucking)));
        instead(held.instead(jaws, chucking), asked, answer);
        return answer;
    }

    /** Where the shop says what it owns, what it does not own stands apart. */
    private static void instead(List<Instead> ways, Asked asked, Answer answer) {
        Set<OwnedHolding> all = EnumSet.allOf(OwnedHolding.class);
        Set<OwnedHolding> owned =
                asked.find(OWNED).<Set<OwnedHolding>>map(EnumSet::copyOf).orElse(all);
        answer.with("instead", said(ways, way -> way.isFor(owned)));
        if (ways.stream().anyMatch(way -> !way.isFor(owned))) {
            answer.with("notOwned", said(ways, way -> !way.isFor(owned)));
        }
    }

    private static Figure said(List<Instead> ways, Predicate<Instead> which) {
        return Figure.many(
                ways.stream().filter(which).map(way -> Figure.of(way.say())).toList());
    }

    /** The width of a space at the tips (mm), given or usual. */
    static double gap(Asked asked, int teeth, double outside) {
        double pitch = Math.PI * outside / teeth;
        double gap = asked.find(GAP).map(Length::mm).orElse(GAP_SHARE * pitch);
        if (gap > MOST_GAP * pitch || gap < LEAST_GAP * pitch) {
            throw Refusal.of(
                    GAP,
                    "the teeth stand " + Figures.atMost(3, pitch)
                            + " mm apart at the tips, so a space must be well within that.");
        }
        return gap;
    }

    private static void way(String say, Chucking.Way way, Working working) {
        String stops =
                way.reach().stream().map(reach -> Figures.atMost(3, reach)).collect(Collectors.joining(", "));
        working.fact(say, stops + " mm from the axis", Source.GEOMETRY);
    }

    private static void runout(String say, double off, Asked asked, Working working) {
        working.step(
                say + ": the dial shows twice how far the work's axis comes to rest from the chuck's",
                "2 e",
                "2 × " + Figures.atMost(4, off) + " mm",
                LengthText.both(Length.mm(2 * off), asked.unit()),
                Source.GEOMETRY);
    }

    private static void warn(Held held, int jaws, Chucking chucking, Working working) {
        working.caution("To this comes the run-out of the chuck itself, and of the teeth: dial it before cutting.");
        if (!chucking.isEven() && jaws > 3) {
            working.caution(
                    "Work held on fewer jaws than there are can be thrown out: do not start the spindle on it.");
        }
        if (held.drops()) {
            working.caution("A jaw in a space wedges the flanks and may break or mark the teeth.");
        }
        if (jaws == 4) {
            working.caution("This is for four jaws that close together; four that move singly can be dialled true.");
        }
    }

    private static Map<String, Integer> jaws() {
        var jaws = new LinkedHashMap<String, Integer>();
        List.of(3, 4, 6).forEach(count -> jaws.put(Integer.toString(count), count));
        return jaws;
    }
}
