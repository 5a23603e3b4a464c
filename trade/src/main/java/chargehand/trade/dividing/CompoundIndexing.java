package chargehand.trade.dividing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two moves in two circles of one plate. Together they reach every multiple of one over the least common multiple of the
 * circles: a holes of c₁ and b of c₂ make k over that multiple when a·(L/c₁) + b·(L/c₂) = k, which has solutions for
 * every k because L/c₁ and L/c₂ have no factor in common.
 */
final class CompoundIndexing {
    private static final int HOW_MANY_EXACT = 4;
    private static final int HOW_MANY_NEAR = 2;

    private CompoundIndexing() {}

    /** The exact ways that count the fewest holes. */
    static List<Way.Compound> exact(List<IndexPlate> plates, BigFraction crank) {
        return ways(plates, crank).stream()
                .filter(way -> way.crank().equals(crank))
                .sorted(Comparator.comparingInt(Way.Compound::counted))
                .limit(HOW_MANY_EXACT)
                .toList();
    }

    /** The ways that come nearest, of equally near ones those that count the fewest holes. */
    static List<Way.Compound> nearest(List<IndexPlate> plates, BigFraction crank) {
        return ways(plates, crank).stream()
                .sorted(Comparator.comparing((Way.Compound way) ->
                                way.crank().subtract(crank).abs())
                        .thenComparingInt(Way.Compound::counted))
                .limit(HOW_MANY_NEAR)
                .toList();
    }

    private static List<Way.Compound> ways(List<IndexPlate> plates, BigFraction crank) {
        var ways = new ArrayList<Way.Compound>();
        for (IndexPlate plate : plates) {
            for (int first : plate.circles()) {
                for (int second : plate.circles()) {
                    if (first != second) {
                        nearest(first, second, crank).ifPresent(ways::add);
                    }
                }
            }
        }
        return ways;
    }

    private static Optional<Way.Compound> nearest(int first, int second, BigFraction crank) {
        int common = gcd(first, second);
        long multiple = (long) first / common * second;
        long steps = Whole.nearest(crank.multiply(BigInteger.valueOf(multiple)));
        int firstStep = second / common;
        int secondStep = first / common;
        if (firstStep == 1) {
            return Optional.empty();
        }
        long inverse = BigInteger.valueOf(secondStep)
                .modInverse(BigInteger.valueOf(firstStep))
                .longValueExact();
        int forward = Math.toIntExact(Math.floorMod(steps * inverse, (long) firstStep));
        return fewest(
                way(steps, forward, first, second, firstStep, secondStep),
                way(steps, forward - firstStep, first, second, firstStep, secondStep));
    }

    private static Optional<Way.Compound> way(
            long steps, int plateHoles, int first, int second, int firstStep, int secondStep) {
        long crankHoles = (steps - (long) plateHoles * secondStep) / firstStep;
        if (plateHoles == 0 || crankHoles <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Way.Compound(Way.Plain.of(Math.toIntExact(crankHoles), first), plateHoles, second));
    }

    private static Optional<Way.Compound> fewest(Optional<Way.Compound> one, Optional<Way.Compound> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return one.get().counted() <= other.get().counted() ? one : other;
    }

    private static int gcd(int a, int b) {
        return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).intValueExact();
    }
}
