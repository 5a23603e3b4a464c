package chargehand.method.search;

import chargehand.measure.WorkTime;
import chargehand.method.holding.Choice;
import chargehand.method.plan.Holding;
import chargehand.method.plan.SetUp;
import chargehand.method.wish.HolderName;
import java.util.Optional;

/** What is saved when a set-up finds the machine and its chuck, collet or vice as the one before left them. */
final class Changeover {
    /** Moving a stop, turning the work round or drawing the bar further out. */
    private static final WorkTime SAME_HOLDER = WorkTime.minutes(1.5);

    private Changeover() {}

    /** The set-up with the setting time it has after another. */
    static SetUp after(Optional<Choice> before, Choice choice, SetUp setUp) {
        return setUp.withSetting(setting(before, choice));
    }

    /** The time it takes to set a holding up after another. */
    static WorkTime setting(Optional<Choice> before, Choice choice) {
        WorkTime setting = choice.costs().setting();
        boolean kept =
                before.filter(last -> holder(last).equals(holder(choice))).isPresent()
                        && SAME_HOLDER.compareTo(setting) < 0;
        return kept ? SAME_HOLDER : setting;
    }

    /** What stays on the machine. */
    static String holder(Choice choice) {
        return choice.machine().name() + ": " + HolderName.of(choice.holding()) + bearing(choice.holding())
                + support(choice.holding());
    }

    private static String support(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> support(chuck.support());
            case Holding.InCollet collet -> support(collet.support());
            case Holding.BetweenCentres centres -> "";
            case Holding.OnMandrel mandrel -> "";
            case Holding.OnStub stub -> " " + stub.bore();
            case Holding.OnFaceplate plate -> "";
            case Holding.InDividingHead head -> support(head.support());
            case Holding.LaidAcross laid -> "";
            case Holding.InVice vice -> "";
            case Holding.OnTable table -> "";
            case Holding.Clamped clamped -> "";
        };
    }

    /** Soft jaws are bored again for another diameter, and jaws are turned round to open. */
    private static String bearing(Holding holding) {
        return holding instanceof Holding.InChuck chuck
                ? switch (chuck.bearing()) {
                    case Holding.Bearing.Closing closing -> "";
                    case Holding.Bearing.Opening opening -> " opening";
                    case Holding.Bearing.SoftJaws soft ->
                        " soft " + chuck.grip().diameter();
                    case Holding.Bearing.SplitBush bush ->
                        " bush " + chuck.grip().diameter();
                }
                : "";
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
