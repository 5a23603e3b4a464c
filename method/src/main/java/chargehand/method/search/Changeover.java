package chargehand.method.search;

import chargehand.measure.WorkTime;
import chargehand.method.plan.Holding;
import chargehand.method.plan.SetUp;

/** What is saved when a set-up finds the machine and its chuck, collet or vice as the one before left them. */
final class Changeover {
    /** Moving a stop, turning the work round or drawing the bar further out. */
    private static final WorkTime SAME_HOLDER = WorkTime.minutes(1.5);

    private Changeover() {}

    /** The set-up with the setting time it has after another. */
    static SetUp after(SetUp before, SetUp setUp) {
        boolean kept = holder(before).equals(holder(setUp)) && SAME_HOLDER.compareTo(setUp.setting()) < 0;
        return kept ? setUp.withSetting(SAME_HOLDER) : setUp;
    }

    /** What stays on the machine. */
    static String holder(SetUp setUp) {
        return setUp.machine() + ": "
                + switch (setUp.holding()) {
                    case Holding.InChuck chuck -> chuck.chuck() + support(chuck.support());
                    case Holding.InCollet collet -> collet.collet() + support(collet.support());
                    case Holding.BetweenCentres centres -> "centres";
                    case Holding.OnMandrel mandrel -> "centres, " + mandrel.mandrel();
                    case Holding.InDividingHead head -> head.head() + support(head.support());
                    case Holding.LaidAcross laid -> laid.vice();
                    case Holding.InVice vice -> vice.vice();
                    case Holding.Clamped clamped -> clamped.with();
                };
    }

    private static String support(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> "";
            case Holding.Support.Centre centre -> " with centre";
            case Holding.Support.FixedSteady steady -> " with fixed steady";
            case Holding.Support.TravellingSteady steady -> " with travelling steady";
        };
    }
}
