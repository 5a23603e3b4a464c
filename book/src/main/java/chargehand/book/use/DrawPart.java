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
import chargehand.book.part.DrawnPart;
import chargehand.book.part.IssueLetter;
import chargehand.book.part.PartIssue;
import chargehand.book.part.PartReader;
import chargehand.book.part.PartReading;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Saves the drawing of a job's part as it is written. A draft with faults is saved like any other, so that nothing typed is
 * lost. Once work has begun, a changed drawing is a new issue. A job whose drawing changes goes back to being drawn.
 */
public final class DrawPart {
    private static final Wording TEXT = new Wording("text", "The drawing", PartIssue.LONGEST);

    private final Book book;
    private final PartReader reader;
    private final Clock clock;

    public DrawPart(Book book, PartReader reader, Clock clock) {
        this.book = book;
        this.reader = reader;
        this.clock = clock;
    }

    /**
     * The drawing as saved, with what it says; an unchanged one is not saved again.
     *
     * @param basedOn the version of the drawing that was in front of the person who wrote, 0 where there was none
     */
    public Changed<DrawnPart> save(JobNumber number, String text, int basedOn, String who) {
        List<Objection> objections = Stream.of(Entering.whoObjection(who), TEXT.objectionTo(text))
                .flatMap(Optional::stream)
                .toList();
        if (!objections.isEmpty()) {
            return Entered.refused(objections);
        }
        PartReading reading = reader.read(text);
        Draft draft = new Draft(text, reading, basedOn, Signed.now(who, clock));
        return book.change(ledger -> ledger.jobs()
                .find(number)
                .map(job -> save(ledger, job, draft))
                .orElseGet(() -> Entering.noJob(number)));
    }

    private record Draft(String text, PartReading reading, int basedOn, Signed by) {}

    private Changed<DrawnPart> save(Ledger ledger, Job job, Draft draft) {
        Optional<PartIssue> latest = ledger.parts().latest(job.number());
        if (latest.filter(issue -> issue.text().equals(draft.text())).isPresent()) {
            return Entered.done(new DrawnPart(latest.get(), draft.reading()));
        }
        if (!job.standing().work().isBeforeProving()) {
            return Entered.refused(
                    "job",
                    "Job " + job.number() + " is " + job.stage().word()
                            + "; its drawing is kept as it was made to. Take a new request for a changed part.");
        }
        int version = latest.map(PartIssue::version).orElse(0);
        return draft.basedOn() == version
                ? Entered.done(add(ledger, job, latest, draft))
                : latest.<Changed<DrawnPart>>map(issue -> new Changed.Overtaken<>(read(issue)))
                        .orElseGet(() -> Entered.refused("basedOn", "Job " + job.number() + " has no drawing yet."));
    }

    private DrawnPart read(PartIssue issue) {
        return new DrawnPart(issue, reader.read(issue.text()));
    }

    private static DrawnPart add(Ledger ledger, Job job, Optional<PartIssue> latest, Draft draft) {
        PartIssue issue = new PartIssue(
                job.number(),
                draft.basedOn() + 1,
                letter(job, latest),
                draft.text(),
                draft.reading().face(),
                draft.by());
        ledger.parts().add(issue);
        if (job.standing() instanceof Standing.At && job.stage() != Stage.BEING_DRAWN) {
            Entering.follow(ledger, job, Stage.BEING_DRAWN, "drawing saved", draft.by());
        }
        return new DrawnPart(issue, draft.reading());
    }

    private static IssueLetter letter(Job job, Optional<PartIssue> latest) {
        boolean begun = job.standing().work() == Stage.IN_HAND;
        return latest.map(issue -> begun ? issue.letter().next() : issue.letter())
                .orElse(IssueLetter.FIRST);
    }
}
