package chargehand.book.use;

import chargehand.book.method.MethodPlanner;
import chargehand.book.store.Book;
import java.time.Clock;

/** Everything that people do with a book, over one store. */
public record Desk(
        JobBook jobs,
        TakeRequest takeRequest,
        AmendRequest amendRequest,
        MoveJob moveJob,
        DrawPart drawPart,
        PlanMethod planMethod,
        TickOperation tickOperation,
        NoteReading noteReading,
        PassHold passHold,
        KeepShop keepShop,
        KeepTexts keepTexts) {

    /**
     * The desk at a book.
     *
     * @param book where everything is kept
     * @param planner works methods out
     * @param clock tells the day and the time, in the shop's own zone
     */
    public static Desk at(Book book, MethodPlanner planner, Clock clock) {
        return new Desk(
                new JobBook(book),
                new TakeRequest(book, clock),
                new AmendRequest(book, clock),
                new MoveJob(book, clock),
                new DrawPart(book, clock),
                new PlanMethod(book, planner, clock),
                new TickOperation(book, clock),
                new NoteReading(book, clock),
                new PassHold(book, clock),
                new KeepShop(book),
                new KeepTexts(book, clock));
    }
}
