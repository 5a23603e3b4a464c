package chargehand.method.setting;

import chargehand.method.kit.DividingHead;
import chargehand.method.plan.Settings;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Comparator;
import java.util.Optional;

/** Plain indexing on the plates owned: whole turns, and holes on a circle that the division comes out even on. */
public final class Indexings {
    private Indexings() {}

    /** Whether a number of divisions can be indexed exactly with the plates owned. */
    public static boolean isPossible(DividingHead head, int divisions) {
        return plain(head, divisions, new Working()).isPresent();
    }

    /** The setting on the largest circle that serves. */
    static Optional<Settings.Indexing> plain(DividingHead head, int divisions, Working working) {
        int worm = head.worm();
        int turns = worm / divisions;
        int rest = worm % divisions;
        var indexing = head.plates().stream()
                .flatMap(plate -> plate.circles().stream())
                .filter(circle -> (rest * circle) % divisions == 0)
                .max(Comparator.naturalOrder())
                .map(circle -> new Settings.Indexing(divisions, turns, rest * circle / divisions, circle));
        indexing.ifPresent(found -> working.step(
                "Turns of the crank for one division",
                "turns = worm / divisions",
                worm + " / " + divisions,
                found.turns() + " turns"
                        + (rest == 0 ? "" : " and " + found.holes() + " holes on the " + found.circle() + " circle"),
                Source.GEOMETRY));
        return indexing;
    }
}
