package chargehand.trade.dividing;

import chargehand.measure.Angle;
import chargehand.trade.wheels.WheelSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a dividing head can do: so many turns of the crank for one of the work, some hole plates, perhaps gears for
 * differential indexing. Everything is reckoned in exact fractions of a turn.
 *
 * @param worm turns of the crank for one turn of the work, 1 to {@value #MOST_WORM}
 * @param plates the hole plates owned
 * @param gears the gears owned for differential indexing, if any
 */
public record Dividing(int worm, List<IndexPlate> plates, Optional<WheelSet> gears) {
    /** More turns to one of the work than any head or table needs. */
    public static final int MOST_WORM = 400;

    /** More divisions than anyone indexes. */
    public static final int MOST_DIVISIONS = 100_000;

    private static final long MILLIARCSECONDS_IN_DEGREE = 3_600_000;
    private static final int DEGREES_IN_TURN = 360;

    public Dividing {
        plates = List.copyOf(plates);
        if (worm < 1 || worm > MOST_WORM) {
            throw new IllegalArgumentException("a worm takes 1 to " + MOST_WORM + " turns, not " + worm);
        }
        if (plates.isEmpty()) {
            throw new IllegalArgumentException("dividing needs at least one plate");
        }
    }

    /** A head without differential gears. */
    public static Dividing of(int worm, List<IndexPlate> plates) {
        return new Dividing(worm, plates, Optional.empty());
    }

    /** Turns of the crank from one of so many equal divisions to the next. */
    public BigFraction crankFor(int divisions) {
        if (divisions < 1 || divisions > MOST_DIVISIONS) {
            throw new IllegalArgumentException("divisions run from 1 to " + MOST_DIVISIONS + ", not " + divisions);
        }
        return BigFraction.of(worm, divisions);
    }

    /** Turns of the crank for an angle of the work, which is taken to the thousandth of a second of arc. */
    public BigFraction crankFor(Angle angle) {
        long milliarcseconds = Math.round(angle.degrees() * MILLIARCSECONDS_IN_DEGREE);
        return BigFraction.of(milliarcseconds, MILLIARCSECONDS_IN_DEGREE)
                .multiply(worm)
                .divide(DEGREES_IN_TURN);
    }

    /** Every exact way of making so many divisions, best first, or the nearest ways where none is exact. */
    public List<Indexed> divide(int divisions) {
        BigFraction crank = crankFor(divisions);
        var exact = new ArrayList<>(exactByHoles(crank));
        if (exact.isEmpty() || !(exact.getFirst().way() instanceof Way.Plain)) {
            gears.ifPresent(set -> exact.addAll(new DifferentialIndexing(this, set).ways(divisions)));
        }
        return exact.isEmpty() ? nearest(crank) : sorted(exact);
    }

    /** Every exact way of turning the work through an angle, best first, or the nearest ways where none is exact. */
    public List<Indexed> turn(Angle angle) {
        BigFraction crank = crankFor(angle);
        List<Indexed> exact = exactByHoles(crank);
        return exact.isEmpty() ? nearest(crank) : sorted(exact);
    }

    private List<Indexed> exactByHoles(BigFraction crank) {
        List<Indexed> plain = PlainIndexing.exact(circles(), crank).stream()
                .map(way -> indexed(way, crank))
                .toList();
        return plain.isEmpty()
                ? CompoundIndexing.exact(plates, crank).stream()
                        .map(way -> indexed(way, crank))
                        .toList()
                : plain;
    }

    private List<Indexed> nearest(BigFraction crank) {
        var ways = new ArrayList<Indexed>();
        PlainIndexing.nearest(circles(), crank).forEach(way -> ways.add(indexed(way, crank)));
        CompoundIndexing.nearest(plates, crank).forEach(way -> ways.add(indexed(way, crank)));
        return sorted(ways);
    }

    private Indexed indexed(Way way, BigFraction crank) {
        return new Indexed(way, way.crank().subtract(crank).divide(worm));
    }

    private static List<Indexed> sorted(List<Indexed> ways) {
        return ways.stream().sorted(Indexed.BEST_FIRST).toList();
    }

    /** Every circle on every plate, once, in rising order. */
    public List<Integer> circles() {
        return plates.stream()
                .flatMap(plate -> plate.circles().stream())
                .sorted()
                .distinct()
                .toList();
    }
}
