package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.PartIssue;
import chargehand.book.progress.Deed;
import chargehand.book.progress.Progress;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.progress.StepAt;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import chargehand.method.plan.Operation;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** What ticking, measuring and passing have in common: the job is being made by a method that is still right for it. */
final class Making {
    private final Book book;
    private final Clock clock;

    Making(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * One operation of the job in hand.
     *
     * @param progress as it stands
     * @param at where
     * @param operation what is to be done there
     * @param who does it
     */
    record Bench(Progress progress, StepAt at, Operation operation, String who) {}

    /** What follows from being at the bench: a deed to enter, nothing to enter, or an objection. */
    sealed interface Wish {
        record Enter(Deed deed) implements Wish {}

        record Nothing() implements Wish {}

        record Not(String field, String say) implements Wish {}
    }

    /** What somebody wants to do at the bench. */
    @FunctionalInterface
    interface Wanting {
        Wish at(Bench bench);
    }

    Entered<Progress> enter(JobNumber number, StepAt at, String who, Wanting wanting) {
        return Entering.whoObjection(who)
                .map(objection -> Entered.<Progress>refused(List.of(objection)))
                .orElseGet(() -> book.change(ledger -> ledger.jobs()
                        .find(number)
                        .map(job -> enter(ledger, job, at, Signed.now(who, clock), wanting))
                        .orElseGet(() -> Entering.noJob(number))));
    }

    private static Entered<Progress> enter(Ledger ledger, Job job, StepAt at, Signed by, Wanting wanting) {
        Optional<MethodRecord> planned = ledger.methods().latest(job.number());
        Optional<Objection> objection = objection(ledger, job, planned);
        if (objection.isPresent()) {
            return Entered.refused(List.of(objection.get()));
        }
        Sheet sheet = new Sheet(job, planned.orElseThrow());
        List<ProgressEntry> entries = ledger.progress().list(job.number());
        Progress progress = sheet.progress(entries);
        return progress.operation(at)
                .map(operation -> wanting.at(new Bench(progress, at, operation, by.who())))
                .map(wish -> grant(ledger, sheet, entries, wish, by))
                .orElseGet(() -> Entered.refused("step", "The method has no " + at + "."));
    }

    private static Optional<Objection> objection(Ledger ledger, Job job, Optional<MethodRecord> planned) {
        if (planned.filter(MethodRecord::isFound).isEmpty()) {
            return Optional.of(new Objection("job", "Job " + job.number() + " has no method yet."));
        }
        if (job.stage() != Stage.READY && job.stage() != Stage.IN_HAND) {
            return Optional.of(new Objection(
                    "job",
                    "Job " + job.number() + " is " + job.stage().word()
                            + "; work is entered while it is ready or in hand."));
        }
        boolean stale =
                ledger.parts().latest(job.number()).map(PartIssue::version).orElse(0)
                                != planned.get().basis().version()
                        || job.request().count() != planned.get().basis().count();
        return stale
                ? Optional.of(new Objection(
                        "job",
                        "The drawing or the count of job " + job.number()
                                + " has changed since its method was worked out; have it worked out again."))
                : Optional.empty();
    }

    /** The job with the method on its sheet. */
    private record Sheet(Job job, MethodRecord planned) {
        Progress progress(List<ProgressEntry> entries) {
            return Progress.of(planned.method().orElseThrow(), ofThis(entries));
        }

        List<ProgressEntry> ofThis(List<ProgressEntry> entries) {
            return entries.stream()
                    .filter(entry -> entry.method() == planned.number())
                    .toList();
        }
    }

    private static Entered<Progress> grant(
            Ledger ledger, Sheet sheet, List<ProgressEntry> before, Wish wish, Signed by) {
        return switch (wish) {
            case Wish.Not(String field, String say) -> Entered.refused(field, say);
            case Wish.Nothing() -> Entered.done(sheet.progress(before));
            case Wish.Enter(Deed deed) -> Entered.done(sheet.progress(add(ledger, sheet, before, deed, by)));
        };
    }

    private static List<ProgressEntry> add(
            Ledger ledger, Sheet sheet, List<ProgressEntry> before, Deed deed, Signed by) {
        Job job = sheet.job();
        ledger.progress().add(new ProgressEntry(job.number(), sheet.planned().number(), before.size() + 1, deed, by));
        if (job.stage() == Stage.READY) {
            Entering.follow(ledger, job, Stage.IN_HAND, "work begun", by);
        }
        return ledger.progress().list(job.number());
    }
}
