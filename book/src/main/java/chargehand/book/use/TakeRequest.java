package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Entered.Done;
import chargehand.book.Entered.Refused;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Request;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.time.Clock;
import java.time.LocalDate;

/** Takes a request into the book, where it becomes a job with a number. */
public final class TakeRequest {
    private final Book book;
    private final Clock clock;

    /** Requests are asked on the clock's day in the clock's zone. */
    public TakeRequest(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /** The new job, or every objection to what was written. */
    public Entered<Job> take(RequestAsWritten written) {
        LocalDate today = LocalDate.now(clock);
        return switch (written.read(today)) {
            case Refused<Request> refused -> Entered.refused(refused.objections());
            case Done<Request> done -> Entered.done(book.change(ledger -> add(ledger, done.value(), today)));
        };
    }

    private static Job add(Ledger ledger, Request request, LocalDate askedOn) {
        Job job = new Job(number(ledger), request, askedOn, new Standing.At(Stage.ASKED_FOR), 1);
        ledger.jobs().add(job);
        return job;
    }

    private static JobNumber number(Ledger ledger) {
        JobNumber first = ledger.shop().shop().firstJob();
        return ledger.jobs()
                .newest()
                .map(JobNumber::next)
                .filter(next -> next.compareTo(first) > 0)
                .orElse(first);
    }
}
