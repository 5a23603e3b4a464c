package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Signed;
import chargehand.book.job.JobNumber;
import chargehand.book.progress.Deed;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.progress.Taken;
import chargehand.book.store.Book;
import chargehand.book.use.Making.Bench;
import chargehand.book.use.Making.Wish;
import java.time.Clock;
import java.util.Optional;
import java.util.stream.Stream;

/** Passes a hold point: someone who neither did the operation nor took its readings says that the work may go on. */
public final class PassHold {
    private final Making making;

    public PassHold(Book book, Clock clock) {
        this.making = new Making(book, clock);
    }

    /** The progress with the hold point passed; refused while a reading is missing or out. */
    public Entered<Progress> pass(JobNumber job, StepAt at, String who) {
        return making.enter(job, at, who, PassHold::pass);
    }

    private static Wish pass(Bench bench) {
        if (!bench.operation().hold()) {
            return new Wish.Not("step", "There is no hold point at " + bench.at() + ".");
        }
        if (!bench.progress().isIn(bench.at())) {
            return new Wish.Not(
                    "step",
                    "The hold point at " + bench.at()
                            + " is passed when all its readings are taken and lie within their limits.");
        }
        return doers(bench)
                        .map(Signed::who)
                        .anyMatch(doer ->
                                doer.strip().equalsIgnoreCase(bench.who().strip()))
                ? new Wish.Not("who", "A hold point is passed by someone who did not do the work or take the readings.")
                : new Wish.Enter(new Deed.HoldPassed(bench.at()));
    }

    private static Stream<Signed> doers(Bench bench) {
        Optional<Signed> ticked = bench.progress().tick(bench.at());
        return Stream.concat(
                ticked.stream(), bench.progress().taken(bench.at()).stream().map(Taken::by));
    }
}
