package chargehand.trade.wheels;

import chargehand.measure.Length;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The best change-wheel trains for a pitch from the wheels owned. */
@AutoService(Sum.class)
public final class WheelsSum implements Sum {
    private static final int MOST_WANTED = 200;

    private static final Field<Pitch> PITCH =
            Field.required("pitch", "Thread to cut", WheelKinds.LEAD, "19 tpi, 1.5 mm, G 3/8");
    private static final Field<Pitch> LEADSCREW =
            Field.required("leadscrew", "Leadscrew", Kinds.PITCH, "8 tpi or 6 mm");
    private static final Field<List<Integer>> WHEELS = Field.required(
            "wheels", "Wheels owned", WheelKinds.WHEELS, "20, 25, 30, 40, 40, 50; a wheel owned twice stands twice");
    private static final Field<List<BigFraction>> GEARBOX = Field.optional(
            "gearbox",
            "Gearbox ratios",
            WheelKinds.GEARBOX,
            "1, 1/2, 1/4: turns of the leadscrew for one of the last wheel");
    private static final Field<Integer> STAGES =
            Field.optional("stages", "Pairs at most", Kinds.count(1, WheelTrains.MOST_PAIRS), "2", "1, 2 or 3");
    private static final Field<Length> LENGTH = Field.optional(
            "length", "Length engaged", Kinds.WORK_SIZE, "25 mm: the length over which the error is judged");
    private static final Field<Integer> BEST =
            Field.optional("best", "How many trains", Kinds.count(1, MOST_WANTED), "10", "10");
    private static final Field<Quadrant> QUADRANT = Field.optional(
            "quadrant",
            "Quadrant",
            WheelKinds.QUADRANT,
            "60 to 140: the fewest and most teeth of two wheels in mesh; leave it out to see trains that may not fit");

    @Override
    public String name() {
        return "wheels";
    }

    @Override
    public String title() {
        return "Change wheels";
    }

    @Override
    public String purpose() {
        return "Finds the trains of change wheels that cut a pitch best, from the wheels owned, with the error of each.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(PITCH, LEADSCREW, WHEELS, GEARBOX, STAGES, LENGTH, BEST, QUADRANT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("ratio", "Turns of the leadscrew for one of the work"),
                Result.always("trains", "Trains, best first").shownFine(),
                Result.sometimes("why", "Why there is none"));
    }

    @Override
    public List<Example> examples() {
        String set = "20,25,30,35,38,40,40,45,50,55,60,65";
        return List.of(
                new Example("19 to the inch", Map.of("pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", set)),
                new Example(
                        "a metric stud on an imperial lathe, without a 127 wheel",
                        Map.of(
                                "pitch", "M20x2.5",
                                "leadscrew", "8 tpi",
                                "wheels", "20,25,30,35,40,45,50,55,60,65,70,75,80,85,90,95,100",
                                "length", "40 mm",
                                "best", "5")),
                new Example(
                        "a pipe thread on a metric lathe with a gearbox",
                        Map.of(
                                "pitch", "G 3/8",
                                "leadscrew", "6 mm",
                                "wheels", "24,30,40,48,60,63,72,127",
                                "gearbox", "1/2,1,2",
                                "quadrant", "70 to 200",
                                "best", "3")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Pitch wanted = asked.get(PITCH);
        Pitch leadscrew = asked.get(LEADSCREW);
        BigFraction ratio = CutPitch.ratio(wanted, leadscrew);
        var steps = new WheelsWorking(wanted, leadscrew, asked.unit(), working);
        steps.ratio(ratio);
        List<CutPitch> trains = search(asked).best(ratio, asked.get(BEST)).stream()
                .map(tried -> CutPitch.of(tried.train(), leadscrew, wanted))
                .toList();
        var answer = new Answer()
                .with("ratio", Figure.of(ratio.doubleValue()))
                .with(
                        "trains",
                        Figure.many(
                                trains.stream().map(cut -> figure(cut, asked)).toList()));
        if (trains.isEmpty()) {
            return answer.with("why", Figure.of(steps.none(asked.get(WHEELS).size(), asked.find(QUADRANT))));
        }
        steps.best(trains.getFirst(), asked.find(LENGTH));
        return answer;
    }

    private static WheelTrains search(Asked asked) {
        WheelTrains trains = WheelTrains.of(set(asked))
                .withGearbox(asked.find(GEARBOX).orElse(List.of()))
                .withPairs(asked.get(STAGES));
        return asked.find(QUADRANT).map(trains::within).orElse(trains);
    }

    private static WheelSet set(Asked asked) {
        return new WheelSet(asked.get(WHEELS));
    }

    private static Figure figure(CutPitch cut, Asked asked) {
        Train train = cut.train();
        var figure = new Answer()
                .with("drivers", Figure.counts(train.drivers()))
                .with("driven", Figure.counts(train.driven()))
                .with("gearbox", Figure.of(train.gearbox().doubleValue()))
                .with("pitch", Figure.of(cut.pitch().length()))
                .with("cuts", Figure.of(Notations.PITCH.text(cut.pitch(), asked.unit())))
                .with("error", Figure.of(cut.error().doubleValue()))
                .with("exact", Figure.of(cut.exact()));
        asked.find(LENGTH).ifPresent(length -> figure.with("errorOver", Figure.of(cut.errorOver(length))));
        order(train, asked).ifPresent(order -> figure.with("order", Figure.of(order)));
        return figure.asGroup();
    }

    private static Optional<String> order(Train train, Asked asked) {
        if (train.drivers().size() == 1 && !asked.has(QUADRANT)) {
            return Optional.of(train.drivers().getFirst() + " drives "
                    + train.driven().getFirst() + " on the leadscrew through an idler of any size");
        }
        return asked.find(QUADRANT)
                .orElse(Quadrant.ROOMY)
                .arrange(train, set(asked))
                .map(Arrangement::toString);
    }
}
