package chargehand.cli;

import chargehand.measure.WorkTime;
import chargehand.measure.WorkTimeText;
import chargehand.method.estimate.Estimate;
import chargehand.method.plan.Method;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Proof;
import chargehand.method.search.Other;
import chargehand.method.wish.Wish;
import chargehand.paper.sheet.HeldIn;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A method, or the reasons why there is none, as lines for a person. */
final class MethodText {
    private final PrintStream out;

    MethodText(PrintStream out) {
        this.out = out;
    }

    void say(MethodAnswer answer) {
        Method method = answer.proved().method();
        head(method);
        answer.wishes().list().forEach(wish -> out.println("As asked: " + wish.says() + "."));
        method.setUps().forEach(setUp -> setUp(method, setUp));
        out.println();
        method.cautions().forEach(caution -> out.println("Take care: " + caution));
        inAll(method, answer.proved().proof());
        out.println(answer.proved().bound().says());
        estimate(answer.estimate());
        notTaken(answer.notTaken());
        others(method, answer.others());
    }

    private void head(Method method) {
        out.println(method.title() + ", issue " + method.issue() + ", " + method.count() + " off, from "
                + method.stock().piece() + ": " + method.stock().says());
    }

    private void setUp(Method method, SetUp setUp) {
        out.println();
        out.println("Set-up " + setUp.number() + ", " + setUp.machine() + ", " + HeldIn.say(setUp.holding()) + ", "
                + WorkTimeText.of(setUp.time(method.count())));
        setUp.instructions().forEach(line -> out.println("   " + line));
        setUp.operations()
                .forEach(operation -> out.println("  " + operation.number() + ". " + operation.say()
                        + operation
                                .settings()
                                .speed()
                                .map(rpm -> ", " + Math.round(rpm.rpm()) + " rpm")
                                .orElse("")));
    }

    private void inAll(Method method, Proof proof) {
        out.println(String.format(
                Locale.ROOT,
                "In all %s. Replayed: every surface within %.3f mm.",
                WorkTimeText.of(method.time()),
                proof.worst().mm()));
    }

    private void estimate(Estimate estimate) {
        Estimate.TimeRange time = estimate.time();
        String hours = WorkTimeText.of(time.least()) + " to " + WorkTimeText.of(time.most());
        String money = estimate.cost()
                .map(cost -> String.format(
                        Locale.ROOT,
                        ", %.0f to %.0f %s with %s",
                        cost.all().least(),
                        cost.all().most(),
                        cost.money(),
                        cost.material()
                                .map(metal -> String.format(Locale.ROOT, "material %.2f", metal.amount()))
                                .orElse("no material")))
                .orElse("");
        out.println("For a customer outside: " + hours + money + ".");
    }

    private void notTaken(List<NotTaken> list) {
        int setUp = 0;
        for (NotTaken each : list) {
            if (each.setUp() != setUp) {
                setUp = each.setUp();
                out.println();
                out.println("Set-up " + setUp + ", why not:");
            }
            out.println("  " + each.machine() + ", " + each.holder() + ": "
                    + each.verdict().says());
        }
    }

    private void others(Method best, List<Other> others) {
        if (!others.isEmpty()) {
            out.println();
            out.println("Other ways:");
        }
        for (Other other : others) {
            Method method = other.ready().method();
            out.println("  " + WorkTimeText.of(method.time()) + " (" + difference(best, method) + "), from "
                    + method.stock().piece() + ": " + holders(method));
            out.println("     Ask for it so: "
                    + other.wishes().list().stream().map(MethodText::option).collect(Collectors.joining(" ")));
        }
    }

    private static String difference(Method best, Method other) {
        double seconds = other.time().seconds() - best.time().seconds();
        String by = WorkTimeText.of(WorkTime.seconds(Math.abs(seconds)));
        return by + (seconds < 0 ? " less" : " more");
    }

    private static String holders(Method method) {
        return method.setUps().stream()
                .map(setUp -> setUp.machine() + ", " + HeldIn.say(setUp.holding()))
                .collect(Collectors.joining("; "));
    }

    /** A wish as it is given on the command line. */
    private static String option(Wish wish) {
        String says = wish.says();
        int blank = says.indexOf(' ');
        return "--" + says.substring(0, blank) + " '" + says.substring(blank + 1) + "'";
    }

    void say(List<Planned.Reason> reasons) {
        out.println("It cannot be made here as it stands.");
        for (Planned.Reason reason : reasons) {
            out.println(" - " + reason.say());
            out.println("   What would unlock it: " + reason.unlock());
        }
    }
}
