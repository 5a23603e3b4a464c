package chargehand.trade.wheels;

import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * All trains that a set of wheels can make, searched for those nearest to a wanted ratio.
 *
 * <p>A train of k pairs is a pick of k drivers and a pick of k driven wheels that do not use one wheel twice. Picks are
 * put in the order of their products. For each pick of driven wheels the drivers that suit it lie beside one place in
 * that order, a place that only moves upwards as the driven product rises, and the search walks outwards from it only
 * while a train could still be among the best. So the work grows with the number of picks, not with its square, and the
 * answer is the same as from trying every train. Ratios and errors are exact fractions.
 */
public final class WheelTrains {
    /** The most pairs of wheels a quadrant carries. */
    public static final int MOST_PAIRS = 3;

    /** Room for rounding where doubles decide how far to walk; exact fractions decide what is kept. */
    private static final double RELATIVE_SLACK = 1e-9;

    private static final double ABSOLUTE_SLACK = 1e-12;

    private final WheelSet wheels;
    private final List<BigFraction> gearbox;
    private final int pairs;
    private final Predicate<Train> suits;

    private WheelTrains(WheelSet wheels, List<BigFraction> gearbox, int pairs, Predicate<Train> suits) {
        this.wheels = wheels;
        this.gearbox = gearbox.stream().distinct().toList();
        this.pairs = pairs;
        this.suits = suits;
    }

    /** Trains of one or two pairs from this set, without a gearbox. */
    public static WheelTrains of(WheelSet wheels) {
        return new WheelTrains(wheels, List.of(BigFraction.ONE), 2, train -> true);
    }

    /** The same with the ratios of a gearbox, each more than zero; with none given there is no gearbox. */
    public WheelTrains withGearbox(List<BigFraction> ratios) {
        return new WheelTrains(wheels, ratios.isEmpty() ? List.of(BigFraction.ONE) : ratios, pairs, suits);
    }

    /** The same with at most so many pairs, 1 to {@value #MOST_PAIRS}. */
    public WheelTrains withPairs(int most) {
        if (most < 1 || most > MOST_PAIRS) {
            throw new IllegalArgumentException("a train has 1 to " + MOST_PAIRS + " pairs, not " + most);
        }
        return new WheelTrains(wheels, gearbox, most, suits);
    }

    /** The same with only those trains that can be set up on this quadrant. */
    public WheelTrains within(Quadrant quadrant) {
        return suiting(train -> quadrant.arrange(train, wheels).isPresent());
    }

    /** The same with only those trains that pass a test, which must not depend on the gearbox. */
    public WheelTrains suiting(Predicate<Train> test) {
        return new WheelTrains(wheels, gearbox, pairs, suits.and(test));
    }

    /** The best so many trains for a ratio of leadscrew turns to work turns, best first; empty where none suits. */
    public List<Tried> best(BigFraction wanted, int howMany) {
        if (wanted.signum() <= 0 || howMany < 1) {
            throw new IllegalArgumentException("a ratio above zero and at least one train must be wanted");
        }
        var best = new BestTrains(howMany);
        for (int k = 1; k <= Math.min(pairs, wheels.teeth().size() / 2); k++) {
            Picks picks = Picks.of(wheels, k);
            for (BigFraction ratio : gearbox) {
                search(picks, new Wanted(wanted, ratio), best);
            }
        }
        return best.bestFirst();
    }

    private record Wanted(BigFraction ratio, BigFraction gearbox, double wheels) {
        Wanted(BigFraction ratio, BigFraction gearbox) {
            this(ratio, gearbox, ratio.divide(gearbox).doubleValue());
        }
    }

    private void search(Picks picks, Wanted wanted, BestTrains best) {
        int nearest = 0;
        for (int driven = 0; driven < picks.size(); driven++) {
            double aim = wanted.wheels * picks.product(driven);
            while (nearest < picks.size() && picks.product(nearest) < aim) {
                nearest++;
            }
            for (int up = nearest; up < picks.size() && near(picks.product(up), aim, best); up++) {
                tryOut(picks.get(up), picks.get(driven), wanted, best);
            }
            for (int down = nearest - 1; down >= 0 && near(picks.product(down), aim, best); down--) {
                tryOut(picks.get(down), picks.get(driven), wanted, best);
            }
        }
    }

    private static boolean near(long product, double aim, BestTrains best) {
        return Math.abs(product / aim - 1) <= best.widest() * (1 + RELATIVE_SLACK) + ABSOLUTE_SLACK;
    }

    private void tryOut(Picks.Pick drivers, Picks.Pick driven, Wanted wanted, BestTrains best) {
        if (!owned(drivers.teeth(), driven.teeth())) {
            return;
        }
        var train = new Train(drivers.teeth(), driven.teeth(), wanted.gearbox);
        Tried tried = Tried.against(wanted.ratio, train);
        if (best.wouldKeep(tried) && suits.test(train)) {
            best.offer(tried);
        }
    }

    /** Whether there are wheels enough for both picks at once. */
    private boolean owned(List<Integer> drivers, List<Integer> driven) {
        for (int teeth : drivers) {
            if (driven.contains(teeth) && uses(drivers, teeth) + uses(driven, teeth) > wheels.count(teeth)) {
                return false;
            }
        }
        return true;
    }

    private static int uses(List<Integer> teeth, int wanted) {
        int uses = 0;
        for (int each : teeth) {
            uses += each == wanted ? 1 : 0;
        }
        return uses;
    }
}
