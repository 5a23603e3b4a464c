package chargehand.timing;

import chargehand.trade.wheels.WheelSet;
import chargehand.trade.wheels.WheelTrains;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The wheels search beside plain nested loops: 30 wheels, up to three pairs, a pitch that no train makes exactly. */
final class WheelTimes {
    /** Thirty wheels from 20 to 107 teeth in steps of three. */
    private static final List<Integer> THIRTY =
            IntStream.range(0, 30).map(wheel -> 20 + 3 * wheel).boxed().toList();

    /** A module 1 worm on a leadscrew of 8 tpi: π mm over 3.175 mm, with π to nine figures. */
    private static final BigFraction WANTED = BigFraction.of(314_159_265, 317_500_000);

    private WheelTimes() {}

    static List<Measured> measured() throws Exception {
        var trains = WheelTrains.of(new WheelSet(THIRTY)).withPairs(3);
        var loops = new WheelLoops(THIRTY);
        double found = Math.abs(trains.best(WANTED, 1).getFirst().error().doubleValue());
        double tried = loops.leastError(WANTED.doubleValue());
        if (found > tried + 1e-12) {
            throw new IllegalStateException("the search found " + found + " where loops found " + tried);
        }
        Stopwatch search = Stopwatch.of(5, 15, () -> trains.best(WANTED, 10));
        Stopwatch plain = Stopwatch.of(1, 5, () -> loops.leastError(WANTED.doubleValue()));
        return List.of(Measured.of("wheels: best ten of a 30-wheel set, up to 3 pairs, warm", search)
                .beside("plain nested loops, best one only: " + plain.text()));
    }
}
