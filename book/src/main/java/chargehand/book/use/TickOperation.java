package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.job.JobNumber;
import chargehand.book.progress.Deed;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.store.Book;
import chargehand.book.use.Making.Bench;
import chargehand.book.use.Making.Wish;
import java.time.Clock;
import java.util.Optional;

/** Ticks operations off the method sheet. The first tick puts a ready job in hand. */
public final class TickOperation {
    private final Making making;

    public TickOperation(Book book, Clock clock) {
        this.making = new Making(book, clock);
    }

    /** The progress with this operation done; refused while a hold point before it is not passed. */
    public Entered<Progress> tick(JobNumber job, StepAt at, String who) {
        return making.enter(job, at, who, TickOperation::tick);
    }

    /** The progress with a tick taken back that was a slip; the tick stays in the history. */
    public Entered<Progress> untick(JobNumber job, StepAt at, String who) {
        return making.enter(job, at, who, TickOperation::untick);
    }

    private static Wish tick(Bench bench) {
        Optional<StepAt> held = bench.progress().heldAt(bench.at());
        if (held.isPresent()) {
            return new Wish.Not(
                    "step",
                    "The hold point at " + held.get()
                            + " comes first: its readings must be passed by someone who did not take them.");
        }
        return bench.progress().isTicked(bench.at()) ? new Wish.Nothing() : new Wish.Enter(new Deed.Ticked(bench.at()));
    }

    private static Wish untick(Bench bench) {
        return bench.progress().isTicked(bench.at())
                ? new Wish.Enter(new Deed.Unticked(bench.at()))
                : new Wish.Nothing();
    }
}
