package chargehand.method.start;

import chargehand.method.kit.Bench;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What to look at once the work is set up and before the machine is switched on, by what holds the work and what machine it
 * is. Common practice; the shop's own rules and whoever is in charge of the machine come first.
 */
public final class BeforeStart {
    private final Method method;
    private final SetUp setUp;
    private final List<String> checks = new ArrayList<>();

    private BeforeStart(Method method, SetUp setUp) {
        this.method = method;
        this.setUp = setUp;
    }

    /** The checks of one of a method's set-ups, in order; only those of the holding where the kit has no such machine. */
    public static List<String> of(Method method, SetUp setUp, Kit kit) {
        var before = new BeforeStart(method, setUp);
        before.checks.addAll(HeldFast.of(setUp.holding()));
        kit.find(setUp.machine()).ifPresent(before::machine);
        return List.copyOf(before.checks);
    }

    private void machine(Machine machine) {
        switch (machine) {
            case Lathe lathe -> lathe();
            case Mill mill -> mill();
            case RadialDrill drill -> drill();
            case Saw saw -> {
                add("Blade tight, teeth the right way, guides close to the work.");
                add("Guard on; nobody in line with the blade.");
            }
            case Bench bench -> {}
        }
    }

    private void lathe() {
        if (isOnBar()) {
            add("No bar out behind the spindle but in a tube or rest: it whips.");
        }
        add("Tool on centre, short out, tight; other tools clear.");
        add("Tool at its nearest, spindle by hand one full turn: nothing touches.");
        speed("Speed set, levers home: ");
        add(
                setUp.operations().stream().anyMatch(operation -> Operated.isScrewCut(operation.cut()))
                        ? "Wheels in mesh, cover shut; feed and half-nut levers out."
                        : "Feed and half-nut levers out.");
        add("Guard down, eyes covered, sleeves up, no gloves.");
        if (setUp.operations().stream().anyMatch(operation -> Operated.isByHand(operation.cut()))) {
            add("For the tap by hand: motor off at the wall, back gear in.");
        }
    }

    /** Whether the work is still the end of a longer bar. */
    private boolean isOnBar() {
        boolean bar = switch (method.stock().blank()) {
            case Blank.RoundBar round -> round.onBar();
            case Blank.PolygonBar polygon -> polygon.onBar();
            case Blank.Slab slab -> false;
            case Blank.OldPart oldPart -> false;
        };
        return bar
                && method.setUps().stream()
                        .takeWhile(before -> before.number() < setUp.number())
                        .flatMap(before -> before.operations().stream())
                        .noneMatch(operation -> operation.cut() instanceof Cut.PartOff);
    }

    private void mill() {
        add("Cutter pulled in tight, spanner off the draw bolt.");
        add("Cutter by hand one full turn: clear of what holds the work.");
        speed("Speed set: ");
        add("Ways that stand still locked; feed against the turn of the cutter.");
        add("Guard down, eyes covered, sleeves up, no gloves.");
    }

    private void drill() {
        add("Chuck key or drift out; the drill runs true by eye.");
        add("Arm and table locked; room for the drill below the work.");
        speed("Speed set: ");
        add("Guard down, eyes covered, hair and sleeves back, no gloves.");
    }

    /** The first speed that is set. */
    private void speed(String words) {
        setUp.operations().stream()
                .map(Operation::settings)
                .flatMap(settings -> settings.speed().stream())
                .findFirst()
                .ifPresent(speed -> add(words + String.format(Locale.ROOT, "%.0f", speed.rpm()) + " rpm."));
    }

    private void add(String check) {
        checks.add(check);
    }
}
