package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.Wording;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.store.Ledger;
import java.util.Optional;

/** What all deeds on a job have in common. */
final class Entering {
    private Entering() {}

    static Optional<Objection> whoObjection(String who) {
        return Wording.WHO.objectionTo(who);
    }

    static <T> Entered<T> noJob(JobNumber number) {
        return Entered.refused("job", "There is no job " + number + " in this book.");
    }

    /** Moves a job and writes the move down. */
    static Job move(Ledger ledger, Job job, Standing to, String note, Signed by) {
        Job moved = job.with(to);
        ledger.jobs().replace(moved);
        ledger.jobs().add(new Move(job.number(), job.stage(), to.stage(), note, by));
        return moved;
    }

    /** As {@link #move}, for a move that follows from another deed. */
    static Job follow(Ledger ledger, Job job, Stage to, String note, Signed by) {
        return move(ledger, job, new Standing.At(to), note, by);
    }
}
