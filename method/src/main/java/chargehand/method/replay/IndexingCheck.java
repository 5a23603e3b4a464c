package chargehand.method.replay;

import chargehand.method.kit.DividingHead;
import chargehand.method.plan.Settings;

/** Whether turns and holes of the crank make so many even divisions. */
final class IndexingCheck {
    private IndexingCheck() {}

    /** One division so many times over must be one turn of the work: {@code worm} turns of the crank, to the hole. */
    static boolean divides(DividingHead head, Settings.Indexing set, int divisions) {
        boolean owned = head.plates().stream().anyMatch(plate -> plate.circles().contains(set.circle()));
        long holes = (long) set.turns() * set.circle() + set.holes();
        return owned
                && set.divisions() == divisions
                && set.holes() >= 0
                && set.holes() < set.circle()
                && holes * divisions == (long) head.worm() * set.circle();
    }
}
