package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.Wording;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Moves a job from one stage to another by hand. */
public final class MoveJob {
    private static final Wording WAITS_FOR = new Wording("note", "What the job waits for", 400);
    private static final Wording NOTE = new Wording("note", "The note", 400);

    private final Book book;
    private final Clock clock;

    public MoveJob(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * The job as it now stands.
     *
     * @param note what it waits for when it is stopped; otherwise why it is moved, or nothing
     */
    public Entered<Job> move(JobNumber number, Stage to, String note, String who) {
        Optional<Objection> noteObjection =
                to == Stage.STOPPED ? objectionToWaitingFor(note) : NOTE.objectionIfGiven(note);
        List<Objection> objections = Stream.of(Entering.whoObjection(who), noteObjection)
                .flatMap(Optional::stream)
                .toList();
        if (!objections.isEmpty()) {
            return Entered.refused(objections);
        }
        Signed by = Signed.now(who, clock);
        return book.change(ledger -> ledger.jobs()
                .find(number)
                .map(job -> move(ledger, job, to, note.strip(), by))
                .orElseGet(() -> Entering.noJob(number)));
    }

    /** Why a job cannot be stopped for this: it is blank, too long, or not to be printed. */
    public static Optional<Objection> objectionToWaitingFor(String what) {
        return WAITS_FOR.objectionTo(what);
    }

    private static Entered<Job> move(Ledger ledger, Job job, Stage to, String note, Signed by) {
        if (!job.standing().moves().contains(to)) {
            return Entered.refused("stage", refusal(job, to));
        }
        Standing standing = to == Stage.STOPPED ? new Standing.Stopped(note, job.stage()) : new Standing.At(to);
        return Entered.done(Entering.move(ledger, job, standing, note, by));
    }

    private static String refusal(Job job, Stage to) {
        String moves = job.standing().moves().stream().map(Stage::word).collect(Collectors.joining(", "));
        return "Job " + job.number() + " is " + job.stage().word() + " and cannot become '" + to.word()
                + "' from there; it can become: " + moves + ".";
    }
}
