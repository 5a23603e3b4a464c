package chargehand.book.use;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Stage;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.part.PartIssue;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the job book. */
public final class JobBook {
    private final Book book;

    public JobBook(Book book) {
        this.book = book;
    }

    public JobPage list(JobQuery query) {
        return book.read(ledger -> ledger.jobs().list(query));
    }

    /** How many jobs there are at each stage; stages without any are left out. */
    public Map<Stage, Integer> counts() {
        return book.read(ledger -> ledger.jobs().counts());
    }

    /** Everything about one job; empty when there is none of that number. */
    public Optional<JobFile> find(JobNumber number) {
        return book.read(ledger -> ledger.jobs().find(number).map(job -> file(ledger, job)));
    }

    /** Every saving of a job's drawing, the first one first. */
    public List<PartIssue> drawings(JobNumber number) {
        return book.read(ledger -> ledger.parts().list(number));
    }

    /** Every planning of a job, the first one first. */
    public List<MethodRecord> plannings(JobNumber number) {
        return book.read(ledger -> ledger.methods().list(number));
    }

    private static JobFile file(Ledger ledger, Job job) {
        Optional<MethodRecord> planned = ledger.methods().latest(job.number());
        int method = planned.map(MethodRecord::number).orElse(0);
        List<ProgressEntry> entries = ledger.progress().list(job.number()).stream()
                .filter(entry -> entry.method() == method)
                .toList();
        return new JobFile(
                job,
                ledger.parts().latest(job.number()).map(DrawnPart::of),
                planned,
                ledger.jobs().moves(job.number()),
                entries,
                ledger.shop().texts().edition());
    }
}
