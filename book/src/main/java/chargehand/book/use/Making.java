package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.method.Basis;
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
                        .map(job -> new Sheet(ledger, job, Signed.now(who, clock)).enter(at, wanting))
                        .orElseGet(() -> Entering.noJob(number))));
    }

    /** The method sheet of a job, in the hands of someone. */
    private record Sheet(Ledger ledger, Job job, Signed by) {
        Entered<Progress> enter(StepAt at, Wanting wanting) {
            Optional<MethodRecord> planned =
                    ledger.methods().latest(job.number()).filter(MethodRecord::isFound);
            return objection(planned)
                    .map(objection -> Entered.<Progress>refused(List.of(objection)))
                    .orElseGet(() -> enter(planned.orElseThrow(), at, wanting));
        }

        private Entered<Progress> enter(MethodRecord planned, StepAt at, Wanting wanting) {
            Progress progress = progress(planned);
            return progress.operation(at)
                    .map(operation -> wanting.at(new Bench(progress, at, operation, by.who())))
                    .map(wish -> grant(wish, planned))
                    .orElseGet(() -> Entered.refused("step", "The method has no " + at + "."));
        }

        private Optional<Objection> objection(Optional<MethodRecord> planned) {
            if (planned.isEmpty()) {
                return objection("has no method yet.");
            }
            if (job.stage() != Stage.READY && job.stage() != Stage.IN_HAND) {
                return objection("is " + job.stage().word() + "; work is entered while it is ready or in hand.");
            }
            return isStale(planned.get().basis())
                    ? objection("is drawn or counted otherwise than when its method was worked out; have it worked out"
                            + " again.")
                    : Optional.empty();
        }

        private Optional<Objection> objection(String say) {
            return Optional.of(new Objection("job", "Job " + job.number() + " " + say));
        }

        private boolean isStale(Basis basis) {
            int version =
                    ledger.parts().latest(job.number()).map(PartIssue::version).orElse(0);
            return version != basis.version() || job.request().count() != basis.count();
        }

        private Progress progress(MethodRecord planned) {
            return Progress.of(
                    planned.method().orElseThrow(),
                    ledger.progress().list(job.number()).stream()
                            .filter(entry -> entry.method() == planned.number())
                            .toList());
        }

        private Entered<Progress> grant(Wish wish, MethodRecord planned) {
            switch (wish) {
                case Wish.Not(String field, String say) -> {
                    return Entered.refused(field, say);
                }
                case Wish.Nothing() -> {}
                case Wish.Enter(Deed deed) -> add(deed, planned);
            }
            return Entered.done(progress(planned));
        }

        private void add(Deed deed, MethodRecord planned) {
            int number = ledger.progress().list(job.number()).size() + 1;
            ledger.progress().add(new ProgressEntry(job.number(), planned.number(), number, deed, by));
            if (job.stage() == Stage.READY) {
                Entering.follow(ledger, job, Stage.IN_HAND, "work begun", by);
            }
        }
    }
}
