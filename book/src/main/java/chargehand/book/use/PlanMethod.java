package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.method.Basis;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodPlanner;
import chargehand.book.method.MethodRecord;
import chargehand.book.method.PlannerReply;
import chargehand.book.part.PartIssue;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.part.yaml.tree.Fault;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * Has a method worked out for a job and keeps what was found, be it a method or the reasons why there is none. A job with a
 * method is ready. The book is not held up while the planner works; if the drawing, the count or the kit changed meanwhile,
 * nothing is kept.
 */
public final class PlanMethod {
    private final Book book;
    private final MethodPlanner planner;
    private final Clock clock;

    public PlanMethod(Book book, MethodPlanner planner, Clock clock) {
        this.book = book;
        this.planner = planner;
        this.clock = clock;
    }

    /** The planning as kept; it keeps to what the latest one was asked for. */
    public Entered<MethodRecord> plan(JobNumber number, String who) {
        List<String> kept = book.read(ledger -> ledger.methods().latest(number))
                .map(latest -> latest.basis().wishes())
                .orElse(List.of());
        return plan(number, kept, who);
    }

    /**
     * The planning as kept, within what is asked of it from now on.
     *
     * @param wishes each as people write it, on a line of its own
     */
    public Entered<MethodRecord> plan(JobNumber number, List<String> wishes, String who) {
        Optional<Objection> objection = Entering.whoObjection(who);
        if (objection.isPresent()) {
            return Entered.refused(List.of(objection.get()));
        }
        Signed by = Signed.now(who, clock);
        return switch (book.read(ledger -> question(ledger, number, wishes))) {
            case Entered.Refused<Question> refused -> Entered.refused(refused.objections());
            case Entered.Done<Question> asked -> answer(number, asked.value(), by);
        };
    }

    /** What the planner is asked, as it stood when it was read. */
    private record Question(Part part, Basis basis, ShopTexts texts) {}

    private static Entered<Question> question(Ledger ledger, JobNumber number, List<String> wishes) {
        Optional<Job> job = ledger.jobs().find(number);
        return job.isEmpty() ? Entering.noJob(number) : question(ledger, job.get(), wishes);
    }

    private static Entered<Question> question(Ledger ledger, Job job, List<String> wishes) {
        Optional<PartIssue> issue = ledger.parts().latest(job.number());
        if (issue.isEmpty()) {
            return Entered.refused("part", "Job " + job.number() + " has no drawing yet; draw the part first.");
        }
        ShopTexts texts = ledger.shop().texts();
        Basis basis = basis(job, issue.get(), texts, wishes);
        Optional<Objection> begun = begun(ledger, job, basis);
        if (begun.isPresent()) {
            return Entered.refused(List.of(begun.get()));
        }
        return switch (PartFile.read(issue.get().text())) {
            case PartReading.Read read -> Entered.done(new Question(read.part(), basis, texts));
            case PartReading.Faulty faulty -> Entered.refused("part", faults(faulty.faults()));
        };
    }

    private static String faults(List<Fault> faults) {
        Fault first = faults.getFirst();
        String number = faults.size() == 1 ? "a fault" : faults.size() + " faults, the first";
        return "The drawing has " + number + " in line " + first.line()
                + ", to be mended before a method is looked for: " + first.say();
    }

    private static Basis basis(Job job, PartIssue issue, ShopTexts texts, List<String> wishes) {
        return new Basis(issue.face().issue(), issue.version(), job.request().count(), texts.edition(), wishes);
    }

    /** A method that is being worked to is not pulled from under the hands of who works to it. */
    private static Optional<Objection> begun(Ledger ledger, Job job, Basis basis) {
        if (!job.standing().work().isBeforeProving()) {
            return Optional.of(new Objection(
                    "job",
                    "Job " + job.number() + " is " + job.stage().word()
                            + "; a method is only worked out for what is still to be made."));
        }
        boolean same = ledger.methods().latest(job.number()).filter(MethodRecord::isFound).stream()
                .anyMatch(record -> record.basis().equals(basis));
        return same && job.standing().work() == Stage.IN_HAND
                ? Optional.of(
                        new Objection(
                                "job",
                                "Job " + job.number() + " is being made by this method, and neither"
                                        + " drawing, count nor kit has changed; put it back to ready to have it worked out again."))
                : Optional.empty();
    }

    private Entered<MethodRecord> answer(JobNumber number, Question question, Signed by) {
        Basis basis = question.basis();
        return switch (planner.plan(question.part(), basis.count(), basis.wishes(), question.texts())) {
            case PlannerReply.KitFaulty faulty -> Entered.refused(faulty.objections());
            case PlannerReply.WishesFaulty faulty -> Entered.refused(faulty.objections());
            case Finding.NotHere notHere -> keep(number, basis, notHere, by);
            case Finding.Found found ->
                found.proof().made()
                        ? keep(number, basis, found, by)
                        : Entered.refused(
                                "method",
                                "A method was found, but when it was replayed the work did not come out"
                                        + " as the part, so it is not to be used and was not kept.");
        };
    }

    private Entered<MethodRecord> keep(JobNumber number, Basis basis, Finding finding, Signed by) {
        return book.change(ledger -> {
            Job job = ledger.jobs().find(number).orElseThrow();
            PartIssue issue = ledger.parts().latest(number).orElseThrow();
            if (!basis.equals(basis(job, issue, ledger.shop().texts(), basis.wishes()))) {
                return Entered.refused(
                        "part",
                        "The drawing, the count or the kit was changed while the method was"
                                + " being worked out; have it worked out again.");
            }
            int next = ledger.methods().latest(number).map(MethodRecord::number).orElse(0) + 1;
            MethodRecord planned = new MethodRecord(number, next, basis, finding, by);
            ledger.methods().add(planned);
            makeReady(ledger, job, planned);
            return Entered.done(planned);
        });
    }

    private static void makeReady(Ledger ledger, Job job, MethodRecord planned) {
        boolean waiting = job.stage() == Stage.ASKED_FOR || job.stage() == Stage.BEING_DRAWN;
        if (planned.isFound() && waiting && job.standing() instanceof Standing.At) {
            Entering.follow(ledger, job, Stage.READY, "method found", planned.by());
        }
    }
}
