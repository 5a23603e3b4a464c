package chargehand.timing;

import chargehand.trade.wheels.Tried;
import chargehand.trade.wheels.WheelSet;
import chargehand.trade.wheels.WheelTrains;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The wheels search beside plain nested loops: 30 wheels, up to three pairs, a pitch that no train makes exactly. */
final class WheelTimes {
    /** Thirty wheels from 20 to 107 teeth in steps of three. */
    private static final List<Integer> THIRTY =
            IntStream.range(0, 30).map(wheel -> 20 + 3 * wheel).boxed().toList();

    /** A module 1 worm on a leadscrew of 8 tpi: π mm over 3.175 mm, with π to nine figures. */
    private static final BigFraction WANTED = BigFraction.of(314_159_265, 317_500_000);

    private static final int BEST = 10;

    /** Errors this near are the same, the loops' being rounded. */
    private static final double SAME = 1e-12;

    private WheelTimes() {}

    static List<Measured> measured() throws Exception {
        WheelTrains trains = WheelTrains.of(new WheelSet(THIRTY)).withPairs(3);
        List<Tried> found = trains.best(WANTED, BEST);
        double wanted = WANTED.doubleValue();
        checkSame(found, WheelLoops.everyOrder(THIRTY, wanted, BEST));
        checkSame(found, WheelLoops.everyTrain(THIRTY, wanted, BEST));
        Stopwatch search = Stopwatch.of(30, 31, () -> trains.best(WANTED, BEST));
        Stopwatch orders = Stopwatch.of(0, 3, () -> WheelLoops.everyOrder(THIRTY, wanted, BEST));
        Stopwatch once = Stopwatch.of(1, 5, () -> WheelLoops.everyTrain(THIRTY, wanted, BEST));
        return List.of(Measured.of("wheels: best ten of a 30-wheel set, up to 3 pairs, warm", search)
                .aim("50 times as fast as nested loops")
                .beside("the same ten by nested loops: " + times(orders, search)
                        + "; by loops that try no train twice: " + times(once, search)));
    }

    private static String times(Stopwatch loops, Stopwatch search) {
        return loops.text() + String.format(Locale.ROOT, ", %.0f times as long", loops.median() / search.median());
    }

    private static void checkSame(List<Tried> found, List<WheelLoops.Nearest> tried) {
        for (int i = 0; i < BEST; i++) {
            double error = Math.abs(found.get(i).error().doubleValue());
            double byLoops = tried.get(i).error();
            if (Math.abs(error - byLoops) > SAME) {
                throw new IllegalStateException(
                        "train " + (i + 1) + ": the search found " + error + " off, the loops " + byLoops);
            }
        }
    }
}
