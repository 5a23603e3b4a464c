package chargehand.trade.drill;

import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.List;

/**
 * One drill for a tapped hole, and what it leaves.
 *
 * @param drill the drill
 * @param engagement how much of the thread is left, 1 for all of it as trade practice counts
 * @param withinLimits whether the hole lies within the limits of the inside thread's minor diameter
 */
record TappingChoice(Drill drill, double engagement, boolean withinLimits) {
    private static final double LEAST_ENGAGEMENT = 0.40;
    private static final long TENTH_MM_IN_NM = 100_000;

    /** The drills that would do, best first: within the limits unless the aim was asked for, then nearest to the aim. */
    static List<TappingChoice> rank(ScrewThread thread, HoleAim aim, List<Drill> drills) {
        Comparator<TappingChoice> limitsFirst =
                Comparator.comparing(choice -> !aim.isAsked() && !choice.withinLimits());
        return drills.stream()
                .map(drill -> of(thread, aim, drill))
                .filter(choice -> choice.wouldDo(aim))
                .sorted(limitsFirst
                        .thenComparingLong(choice -> choice.off(aim))
                        .thenComparing(TappingChoice::isOddTenth)
                        .thenComparing(choice -> choice.drill().diameter()))
                .toList();
    }

    private static TappingChoice of(ScrewThread thread, HoleAim aim, Drill drill) {
        double engagement =
                thread.major().minus(drill.diameter()).over(thread.profile().fullEngagement());
        return new TappingChoice(drill, engagement, aim.isWithinLimits(drill.diameter()));
    }

    /** Smaller than the form leaves the tap no room; much larger leaves hardly any thread. */
    private boolean wouldDo(HoleAim aim) {
        return !drill.diameter().isLessThan(aim.least()) && engagement >= LEAST_ENGAGEMENT;
    }

    private long off(HoleAim aim) {
        return drill.diameter().minus(aim.diameter()).abs().nanometres();
    }

    /** Of two drills equally near, tables take the one of an even tenth of a millimetre: 6.8 for 6.75, 10.2 for 10.25. */
    private boolean isOddTenth() {
        return drill.diameter().nanometres() / TENTH_MM_IN_NM % 2 != 0;
    }
}
