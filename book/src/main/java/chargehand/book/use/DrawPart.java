package chargehand.book.use;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.Wording;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.part.yaml.tree.YamlTree;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Saves the drawing of a job's part as it is written. A draft with faults is saved like any other, so that nothing typed is
 * lost. Once work has begun to an issue, a changed drawing is another issue. A job whose drawing changes goes back to being
 * drawn.
 */
public final class DrawPart {
    private static final Wording TEXT = new Wording("text", "The drawing", YamlTree.MOST_CHARACTERS);

    private final Book book;
    private final Clock clock;

    public DrawPart(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /**
     * The drawing as saved, with what it says; an unchanged one is not saved again.
     *
     * @param basedOn the version of the drawing that was in front of the person who wrote, 0 where there was none
     */
    public Changed<DrawnPart> save(JobNumber number, String text, int basedOn, String who) {
        List<Objection> objections = Stream.of(Entering.whoObjection(who), objectionTo(text))
                .flatMap(Optional::stream)
                .toList();
        if (!objections.isEmpty()) {
            return Entered.refused(objections);
        }
        Draft draft = new Draft(text, PartFile.read(text), basedOn, Signed.now(who, clock));
        return book.change(ledger -> ledger.jobs()
                .find(number)
                .map(job -> save(ledger, job, draft))
                .orElseGet(() -> Entering.noJob(number)));
    }

    /** Why a text cannot be kept at all, whatever it says: it is blank, too long, or not to be printed. */
    public static Optional<Objection> objectionTo(String text) {
        return TEXT.objectionTo(text);
    }

    private record Draft(String text, PartReading reading, int basedOn, Signed by) {}

    private static Changed<DrawnPart> save(Ledger ledger, Job job, Draft draft) {
        Optional<PartIssue> latest = ledger.parts().latest(job.number());
        if (latest.filter(issue -> issue.text().equals(draft.text())).isPresent()) {
            return Entered.done(new DrawnPart(latest.get(), draft.reading()));
        }
        int version = latest.map(PartIssue::version).orElse(0);
        if (draft.basedOn() != version) {
            return latest.<Changed<DrawnPart>>map(issue -> new Changed.Overtaken<>(DrawnPart.of(issue)))
                    .orElseGet(() -> Entered.refused("basedOn", "Job " + job.number() + " has no drawing yet."));
        }
        return objection(ledger, job, draft)
                .map(objection -> Entered.<DrawnPart>refused(List.of(objection)))
                .orElseGet(() -> Entered.done(add(ledger, job, draft)));
    }

    private static Optional<Objection> objection(Ledger ledger, Job job, Draft draft) {
        if (!job.standing().work().isBeforeProving()) {
            return Optional.of(new Objection(
                    "job",
                    "Job " + job.number() + " is " + job.stage().word()
                            + "; its drawing is kept as it was made to. Take a new request for a changed part."));
        }
        Face face = Face.of(draft.reading());
        return face.drawn() && issuesBegun(ledger, job).contains(face.issue())
                ? Optional.of(new Objection(
                        "issue",
                        "Work has begun to issue " + face.issue() + " of this drawing; give the changed one another."))
                : Optional.empty();
    }

    /** The issues to which something was already made. */
    private static Set<String> issuesBegun(Ledger ledger, Job job) {
        Set<Integer> methods = ledger.progress().list(job.number()).stream()
                .map(ProgressEntry::method)
                .collect(Collectors.toSet());
        return ledger.methods().list(job.number()).stream()
                .filter(planned -> methods.contains(planned.number()))
                .map(MethodRecord::basis)
                .map(basis -> basis.issue())
                .collect(Collectors.toSet());
    }

    private static DrawnPart add(Ledger ledger, Job job, Draft draft) {
        PartIssue issue =
                new PartIssue(job.number(), draft.basedOn() + 1, draft.text(), Face.of(draft.reading()), draft.by());
        ledger.parts().add(issue);
        if (job.standing() instanceof Standing.At && job.stage() != Stage.BEING_DRAWN) {
            Entering.follow(ledger, job, Stage.BEING_DRAWN, "drawing saved", draft.by());
        }
        return new DrawnPart(issue, draft.reading());
    }
}
