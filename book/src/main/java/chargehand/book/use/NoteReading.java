package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.job.JobNumber;
import chargehand.book.progress.Deed;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.progress.Taken;
import chargehand.book.store.Book;
import chargehand.book.use.Making.Bench;
import chargehand.book.use.Making.Wish;
import chargehand.measure.LengthReader;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import java.time.Clock;

/** Notes a size that was measured. A reading out of its limits is noted like any other, and says so. */
public final class NoteReading {
    private final Making making;

    public NoteReading(Book book, Clock clock) {
        this.making = new Making(book, clock);
    }

    /**
     * The progress with the reading in it. One that was taken before stays in the history and is put right by this one.
     *
     * @param size as written; a bare number is read in the unit of the machine's dials
     */
    public Entered<Progress> note(JobNumber job, Place place, String size, String who) {
        return making.enter(job, place.at(), who, bench -> note(bench, place.reading(), size));
    }

    /**
     * Where a reading belongs.
     *
     * @param at which operation on which piece
     * @param reading which of the operation's readings, from 1
     */
    public record Place(StepAt at, int reading) {}

    private static Wish note(Bench bench, int reading, String size) {
        if (reading < 1 || reading > bench.operation().readings().size()) {
            return new Wish.Not("reading", "There is no reading " + reading + " at " + bench.at() + ".");
        }
        try {
            return note(
                    bench,
                    reading,
                    LengthReader.read(size, bench.operation().settings().unit()));
        } catch (Unreadable unreadable) {
            return new Wish.Not("size", unreadable.say());
        }
    }

    private static Wish note(Bench bench, int reading, Written size) {
        var before = bench.progress().taken(bench.at(), reading).map(Taken::entry);
        return new Wish.Enter(new Deed.Measured(bench.at(), reading, size, before));
    }
}
