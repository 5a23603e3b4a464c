package chargehand.web.serving;

import chargehand.book.job.JobNumber;
import chargehand.book.use.Desk;
import chargehand.book.use.JobFile;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Sums;
import chargehand.web.serving.Frame.Section;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/**
 * What the pages work with.
 *
 * @param desk everything people do with the book
 * @param sums every sum there is
 */
public record Counter(Desk desk, Sums sums) {
    /** The frame of a page. */
    public Frame frame(String title, Section section) {
        return new Frame(desk.keepShop().shop().name(), title, section);
    }

    /** The unit a bare number is read in. */
    public LengthUnit unit() {
        return desk.keepShop().shop().unit();
    }

    /** The number of the job that an address names. */
    public static JobNumber number(Context context) {
        String written = context.pathParam("job");
        return JobNumber.parse(written)
                .orElseThrow(() -> new NotFoundResponse("A job has a number, such as 214, not '" + written + "'."));
    }

    /** The job that an address names; a page that says so when there is none. */
    public JobFile job(Context context) {
        JobNumber number = number(context);
        return desk.jobs()
                .find(number)
                .orElseThrow(() -> new NotFoundResponse("There is no job " + number + " in this book."));
    }
}
