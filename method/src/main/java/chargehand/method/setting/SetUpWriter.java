package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import java.util.ArrayList;
import java.util.List;

/** Writes one set-up in full: its tasks in the trade's order, each with its settings. */
public final class SetUpWriter {
    /** The coarsest feed for each turn that is ever set here. */
    public static final Length COARSEST_FEED = Feeding.ROUGH;

    private static final String FIRST_OFF =
            "First one off: measure all that is cut here and have it passed before the next one is begun.";

    private final Making making;
    private final ThreadWays ways;

    /** @param ways shared by all that plan one part, so that each train is searched for once */
    public SetUpWriter(Making making, ThreadWays ways) {
        this.making = making;
        this.ways = ways;
    }

    public ThreadWays threadWays() {
        return ways;
    }

    /** The set-up with this number. */
    public SetUp write(int number, Job job) {
        Choice choice = job.choice();
        List<Draft> drafts = choice.machine() instanceof Lathe lathe
                ? new LatheSetUp(making, ways, lathe, job).write()
                : new TableWork(making, job, ways.divisions()).write();
        var operations = new ArrayList<Operation>();
        for (Draft draft : drafts) {
            operations.add(draft.write(operations.size() + 1));
        }
        return new SetUp(
                number,
                choice.machine().name(),
                choice.holding(),
                instructions(job),
                operations,
                choice.costs().setting(),
                choice.costs().loading(),
                choice.working());
    }

    private static List<String> instructions(Job job) {
        var all = new ArrayList<>(job.choice().instructions());
        if (job.pieces() > 1) {
            all.add(FIRST_OFF);
        }
        return all;
    }
}
