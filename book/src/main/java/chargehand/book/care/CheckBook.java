package chargehand.book.care;

import chargehand.book.job.Job;
import chargehand.book.job.JobLine;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import chargehand.part.yaml.PartFile;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks a whole book through: the store itself, then every job, that its moves lead to where it stands, that every drawing
 * says what it said when it was saved, and that every method and every entry of progress can be read.
 */
public final class CheckBook {
    private static final int JOBS_AT_A_TIME = 500;

    private final Book book;
    private final Storage storage;

    public CheckBook(Book book, Storage storage) {
        this.book = book;
        this.storage = storage;
    }

    /** Everything that is not whole; nothing when all is. Jobs are not looked at in a store that is broken itself. */
    public List<Trouble> check() {
        List<Trouble> broken = storage.faults().stream()
                .map(say -> new Trouble("the file", say))
                .toList();
        return broken.isEmpty() ? book.read(CheckBook::jobs) : broken;
    }

    private static List<Trouble> jobs(Ledger ledger) {
        var found = new ArrayList<Trouble>();
        JobQuery query = JobQuery.all().size(JOBS_AT_A_TIME);
        int pages = ledger.jobs().list(query).pages();
        for (int page = 1; page <= pages; page++) {
            ledger.jobs().list(query.page(page)).lines().stream()
                    .map(JobLine::job)
                    .forEach(job -> found.addAll(troubles(ledger, job)));
        }
        return found;
    }

    private static List<Trouble> troubles(Ledger ledger, Job job) {
        var found = new ArrayList<Trouble>();
        JobNumber number = job.number();
        try {
            moves(job, ledger.jobs().moves(number)).ifPresent(found::add);
            ledger.parts().list(number).forEach(issue -> drawing(issue).ifPresent(found::add));
            ledger.methods().list(number);
            ledger.progress().list(number);
        } catch (IllegalArgumentException | DateTimeException unreadable) {
            found.add(new Trouble(
                    "job " + number, "Something kept of it cannot be read: " + unreadable.getMessage() + "."));
        }
        return found;
    }

    private static Optional<Trouble> moves(Job job, List<Move> moves) {
        Stage stage = Stage.ASKED_FOR;
        for (Move move : moves) {
            if (move.from() != stage) {
                return Optional.of(new Trouble(
                        "job " + job.number(),
                        "A move begins at '" + move.from().word() + "', but the job was '" + stage.word() + "' then."));
            }
            stage = move.to();
        }
        return stage == job.stage()
                ? Optional.empty()
                : Optional.of(new Trouble(
                        "job " + job.number(),
                        "It stands at '" + job.stage().word() + "', but its moves lead to '" + stage.word() + "'."));
    }

    private static Optional<Trouble> drawing(PartIssue issue) {
        Face face = Face.of(PartFile.read(issue.text()));
        return !issue.isDrawn() || face.equals(issue.face())
                ? Optional.empty()
                : Optional.of(new Trouble(
                        "job " + issue.job() + ", drawing " + issue.version(),
                        "It was without fault when it was saved and does not read so now."));
    }
}
