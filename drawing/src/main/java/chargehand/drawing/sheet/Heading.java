package chargehand.drawing.sheet;

import chargehand.drawing.picture.Picture;
import java.util.Optional;

/**
 * What the title block says besides what the part itself says; each may be empty.
 *
 * @param owner whose drawing it is, such as the workshop's name
 * @param job the job it belongs to
 * @param customer who asked for the part
 * @param stock what it is made from
 * @param drawn who drew it; where it is empty, who made the first issue
 * @param date the date of issue; where it is empty, that of the last issue in the table
 * @param code a code that opens the job, as a square picture
 */
public record Heading(
        String owner, String job, String customer, String stock, String drawn, String date, Optional<Picture> code) {
    /** Nothing filled in, to be written by hand. */
    public static final Heading BLANK = new Heading("", "", "", "", "", "", Optional.empty());

    /** The same with a code that opens the job. */
    public Heading with(Picture code) {
        return new Heading(owner, job, customer, stock, drawn, date, Optional.of(code));
    }
}
