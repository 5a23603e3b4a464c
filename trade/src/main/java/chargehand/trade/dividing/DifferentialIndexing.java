package chargehand.trade.dividing;

import chargehand.trade.wheels.Tried;
import chargehand.trade.wheels.WheelSet;
import chargehand.trade.wheels.WheelTrains;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The crank alone while the plate is geared to the spindle. For N divisions the crank makes f turns against the plate at
 * each; over one turn of the work that is N·f, and the plate must make up what is missing to the worm's own turns:
 * r = worm − N·f turns for one of the spindle, with the crank where r is positive and against it where negative.
 */
final class DifferentialIndexing {
    private static final int HOW_MANY = 5;
    private static final BigFraction FASTEST_PLATE = BigFraction.of(6);
    private static final BigFraction SLOWEST_PLATE = BigFraction.of(1, 6);

    private final Dividing head;
    private final WheelTrains trains;

    DifferentialIndexing(Dividing head, WheelSet gears) {
        this.head = head;
        trains = WheelTrains.of(gears);
    }

    /** The simplest exact ways, each with a different pair of circle and move. */
    List<Indexed> ways(int divisions) {
        var moves = new ArrayList<Way.Plain>();
        for (int circle : head.circles()) {
            addMoves(divisions, circle, moves);
        }
        moves.sort(Comparator.comparing(move -> ratio(divisions, move).abs()));
        var ways = new ArrayList<Indexed>();
        for (Way.Plain move : moves) {
            addWay(divisions, move, ways);
        }
        return ways.stream().sorted(Indexed.BEST_FIRST).limit(HOW_MANY).toList();
    }

    private void addMoves(int divisions, int circle, List<Way.Plain> moves) {
        BigFraction ideal = head.crankFor(divisions).multiply(circle);
        BigFraction reach = FASTEST_PLATE.multiply(circle).divide(divisions);
        int least = Math.max(1, Whole.nearest(positive(ideal.subtract(reach))));
        int most = Whole.nearest(ideal.add(reach));
        for (int holes = least; holes <= most; holes++) {
            Way.Plain move = Way.Plain.of(holes, circle);
            BigFraction ratio = ratio(divisions, move).abs();
            if (ratio.compareTo(SLOWEST_PLATE) >= 0 && ratio.compareTo(FASTEST_PLATE) <= 0) {
                moves.add(move);
            }
        }
    }

    private static BigFraction positive(BigFraction fraction) {
        return fraction.signum() < 0 ? BigFraction.ZERO : fraction;
    }

    private void addWay(int divisions, Way.Plain move, List<Indexed> ways) {
        BigFraction ratio = ratio(divisions, move);
        boolean sameMove = ways.stream().anyMatch(way -> way.way().crank().equals(move.crank()));
        if (!sameMove) {
            trains.best(ratio.abs(), 1).stream()
                    .filter(Tried::exact)
                    .map(tried -> new Way.Differential(move, PlateGears.of(ratio, tried.train())))
                    .forEach(way -> ways.add(new Indexed(way, BigFraction.ZERO)));
        }
    }

    private BigFraction ratio(int divisions, Way.Plain move) {
        return BigFraction.of(head.worm()).subtract(move.crank().multiply(divisions));
    }
}
