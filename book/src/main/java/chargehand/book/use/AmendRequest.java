package chargehand.book.use;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Entered.Done;
import chargehand.book.Entered.Refused;
import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Move;
import chargehand.book.job.Request;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.time.Clock;
import java.util.List;
import java.util.stream.Collectors;

/** Puts a request right after it was taken; what it said before stays in the job's history. */
public final class AmendRequest {
    private static final List<String> FIELDS = List.of(
            RequestAsWritten.ASSET,
            RequestAsWritten.WANTS,
            RequestAsWritten.ASKER,
            RequestAsWritten.COUNT,
            RequestAsWritten.WANTED_BY);

    private final Book book;
    private final Clock clock;

    public AmendRequest(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * The job as it now stands.
     *
     * @param basedOn the version of the job that was in front of the person who wrote
     */
    public Changed<Job> amend(JobNumber number, RequestAsWritten written, int basedOn, String who) {
        return Entering.whoObjection(who)
                .<Changed<Job>>map(objection -> Entered.refused(List.of(objection)))
                .orElseGet(() -> {
                    Amendment amendment = new Amendment(written, basedOn, Signed.now(who, clock));
                    return book.change(ledger -> ledger.jobs()
                            .find(number)
                            .map(job -> amend(ledger, job, amendment))
                            .orElseGet(() -> Entering.noJob(number)));
                });
    }

    private record Amendment(RequestAsWritten written, int basedOn, Signed by) {}

    private static Changed<Job> amend(Ledger ledger, Job job, Amendment amendment) {
        if (amendment.basedOn() != job.version()) {
            return new Changed.Overtaken<>(job);
        }
        return switch (amendment.written().read(job.askedOn())) {
            case Refused<Request> refused -> Entered.refused(refused.objections());
            case Done<Request> done -> Entered.done(amended(ledger, job, done.value(), amendment.by()));
        };
    }

    private static Job amended(Ledger ledger, Job job, Request request, Signed by) {
        if (request.equals(job.request())) {
            return job;
        }
        Job amended = job.with(request);
        ledger.jobs().replace(amended);
        ledger.jobs().add(new Move(job.number(), job.stage(), job.stage(), difference(job.request(), request), by));
        return amended;
    }

    private static String difference(Request before, Request after) {
        RequestAsWritten was = RequestAsWritten.of(before);
        RequestAsWritten is = RequestAsWritten.of(after);
        return FIELDS.stream()
                .filter(field -> !was.text(field).equals(is.text(field)))
                .map(field -> field + " was '" + was.text(field) + "'")
                .collect(Collectors.joining("; ", "request changed: ", ""));
    }
}
