package chargehand.method.replay;

import chargehand.method.kit.DividingHead;
import chargehand.method.plan.Settings;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether turns and holes of the crank make so many even divisions. */
final class IndexingCheck {
    private IndexingCheck() {}

    /** What the crank makes on its own and what the plate makes besides come to the worm's turns. */
    private static boolean comesRound(DividingHead head, Settings.Indexing set, long holes) {
        BigFraction crank = BigFraction.of(BigInteger.valueOf(holes), BigInteger.valueOf(set.circle()));
        BigFraction plate = set.geared().map(IndexingCheck::plate).orElse(BigFraction.ZERO);
        return set.geared().map(gears -> isOwned(head, gears)).orElse(true)
                && crank.add(plate).equals(BigFraction.of(head.worm()));
    }

    private static boolean isOwned(DividingHead head, Settings.Geared gears) {
        var left = new ArrayList<>(head.gears());
        return Stream.concat(gears.drivers().stream(), gears.driven().stream()).allMatch(left::remove);
    }

    /** Turns of the plate for one of the work: against the crank where one wheel more stands between. */
    private static BigFraction plate(Settings.Geared gears) {
        BigFraction ratio = BigFraction.of(product(gears.drivers()), product(gears.driven()));
        boolean with = (gears.drivers().size() == 1 ? gears.idlers() - 1 : gears.idlers()) % 2 == 0;
        return with ? ratio : ratio.negate();
    }

    private static int product(List<Integer> teeth) {
        return teeth.stream().reduce(1, (one, other) -> one * other);
    }

    /** One division so many times over must be one turn of the work: {@code worm} turns of the crank, to the hole. */
    static boolean divides(DividingHead head, Settings.Indexing set, int divisions) {
        boolean owned = head.plates().stream().anyMatch(plate -> plate.circles().contains(set.circle()));
        long holes = (long) set.turns() * set.circle() + set.holes();
        return owned
                && set.divisions() == divisions
                && set.holes() >= 0
                && set.holes() < set.circle()
                && comesRound(head, set, holes * divisions);
    }
}
