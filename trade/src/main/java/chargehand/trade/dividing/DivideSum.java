package chargehand.trade.dividing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
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
import chargehand.trade.wheels.WheelSet;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** How to move the crank of a dividing head. */
@AutoService(Sum.class)
public final class DivideSum implements Sum {
    private static final int MOST_IN_TABLE = 400;

    private static final Field<Integer> DIVISIONS =
            Field.optional("divisions", "Divisions", Kinds.count(1, Dividing.MOST_DIVISIONS), "73; or give an angle");
    private static final Field<Angle> ANGLE =
            Field.optional("angle", "Angle", Kinds.ANGLE, "5° 20'; or give the divisions");
    private static final Field<Integer> WORM = Field.optional(
            "worm", "Turns of the crank to one of the work", Kinds.count(1, Dividing.MOST_WORM), "40", "40");
    private static final Field<List<IndexPlate>> PLATES = Field.required(
            "plates",
            "Hole plates",
            new PlatesKind(),
            "15,16,17,18,19,20; 21,23,27,29,31,33; 37,39,41,43,47,49: one plate after another");
    private static final Field<List<Integer>> GEARS = Field.optional(
            "gears",
            "Gears for differential indexing",
            Kinds.listOf(Kinds.count(WheelSet.FEWEST_TEETH, WheelSet.MOST_TEETH), WheelSet.MOST_WHEELS),
            "24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100; leave it out if the head has none");
    private static final Field<Length> DIAMETER = Field.optional(
            "diameter", "Diameter divided", Kinds.WORK_SIZE, "100 mm: gives the chord to check with dividers");

    @Override
    public String name() {
        return "divide";
    }

    @Override
    public String title() {
        return "Dividing";
    }

    @Override
    public String purpose() {
        return "Gives the turns and holes for any number of divisions or an angle: plain, compound or differential.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(DIVISIONS, ANGLE, WORM, PLATES, GEARS, DIAMETER);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("crank", "Turns of the crank at each move"),
                Result.always("ways", "Ways, best first"),
                Result.sometimes("why", "Why there is none"),
                Result.sometimes("chord", "Chord from one division to the next").shownFine(),
                Result.sometimes("holes", "Holes on that circle, from its middle")
                        .shownFine(),
                Result.sometimes("table", "Where the pin goes, division by division"),
                Result.sometimes("tableCircle", "Circle of that table"),
                Result.sometimes("tableError", "Most that any place of that table is off"));
    }

    @Override
    public List<Example> examples() {
        String plates = "15,16,17,18,19,20; 21,23,27,29,31,33; 37,39,41,43,47,49";
        return List.of(
                new Example("plain, for a hexagon", Map.of("divisions", "6", "plates", plates)),
                new Example("compound", Map.of("divisions", "77", "plates", plates, "diameter", "100 mm")),
                new Example(
                        "differential, for an index ring",
                        Map.of(
                                "divisions", "73",
                                "plates", plates,
                                "gears", "24,24,28,32,40,44,48,56,64,72,86,100")),
                new Example("none exact, the nearest hole each time", Map.of("divisions", "127", "plates", plates)),
                new Example(
                        "an angle on a rotary table", Map.of("angle", "5° 20'", "worm", "90", "plates", "15,18,20")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        var head = new Dividing(
                asked.get(WORM), asked.get(PLATES), asked.find(GEARS).map(WheelSet::new));
        if (asked.has(DIVISIONS) == asked.has(ANGLE)) {
            throw Refusal.of(DIVISIONS, "give either the number of divisions or an angle, one of the two.");
        }
        return asked.has(DIVISIONS) ? divisions(head, asked, working) : angle(head, asked, working);
    }

    private static Answer divisions(Dividing head, Asked asked, Working working) {
        int divisions = asked.get(DIVISIONS);
        BigFraction crank = head.crankFor(divisions);
        var steps = new DivideWorking(head, working);
        steps.divisions(divisions, crank);
        List<Indexed> ways = head.divide(divisions);
        if (ways.isEmpty()) {
            return none(crank);
        }
        steps.best(ways.getFirst(), crank, divisions);
        Answer answer = answer(crank, ways);
        asked.find(DIAMETER).ifPresent(diameter -> onCircle(diameter, divisions, steps, answer));
        boolean byHand =
                ways.getFirst().way() instanceof Way.Plain || !ways.getFirst().exact();
        if (byHand && divisions <= MOST_IN_TABLE) {
            HoleTable table = HoleTable.best(head, divisions);
            steps.table(table);
            answer.with("table", table(table))
                    .with("tableCircle", Figure.of((long) table.circle()))
                    .with("tableError", Figure.of(table.worst()));
        }
        return answer;
    }

    private static void onCircle(Length diameter, int divisions, DivideWorking steps, Answer answer) {
        answer.with("chord", Figure.of(steps.chord(diameter, divisions)));
        if (divisions <= MOST_IN_TABLE) {
            var circle = new BoltCircle(diameter, divisions);
            steps.places(circle);
            answer.with("holes", holes(circle));
        }
    }

    private static Figure holes(BoltCircle circle) {
        return Figure.many(circle.places().stream()
                .map(place -> new Answer()
                        .with("hole", Figure.of((long) place.hole()))
                        .with("across", Figure.of(place.across()))
                        .with("up", Figure.of(place.up()))
                        .asGroup())
                .toList());
    }

    private static Answer angle(Dividing head, Asked asked, Working working) {
        Angle angle = asked.get(ANGLE);
        if (angle.degrees() <= 0) {
            throw Refusal.of(ANGLE, "an angle to turn through is more than nothing.");
        }
        BigFraction crank = head.crankFor(angle);
        if (crank.signum() == 0) {
            throw Refusal.of(ANGLE, "this angle is too small to be turned through.");
        }
        var steps = new DivideWorking(head, working);
        steps.angle(angle, crank);
        List<Indexed> ways = head.turn(angle);
        if (ways.isEmpty()) {
            return none(crank);
        }
        steps.best(ways.getFirst(), crank, 1);
        return answer(crank, ways);
    }

    private static Answer none(BigFraction crank) {
        return answer(crank, List.of())
                .with(
                        "why",
                        Figure.of("Each move is less than half the space between two holes of any circle here: a finer"
                                + " circle or a larger worm is needed."));
    }

    private static Answer answer(BigFraction crank, List<Indexed> ways) {
        return new Answer()
                .with("crank", Figure.of(crank.doubleValue()))
                .with("ways", Figure.many(ways.stream().map(WayFigure::of).toList()));
    }

    private static Figure table(HoleTable table) {
        return Figure.many(table.places().stream()
                .map(place -> new Answer()
                        .with("division", Figure.of((long) place.division()))
                        .with("turns", Figure.of((long) place.turns()))
                        .with("hole", Figure.of((long) place.hole()))
                        .with("error", Figure.of(place.error()))
                        .asGroup())
                .toList());
    }
}
