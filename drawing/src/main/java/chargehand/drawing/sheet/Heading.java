package chargehand.drawing.sheet;

/**
 * What the title block says besides what the part itself says; each may be empty.
 *
 * @param owner whose drawing it is, such as the workshop's name
 * @param job the job it belongs to
 * @param customer who asked for the part
 * @param stock what it is made from
 * @param drawn who drew it
 * @param date the date of issue
 */
public record Heading(String owner, String job, String customer, String stock, String drawn, String date) {
    /** Nothing filled in, to be written by hand. */
    public static final Heading BLANK = new Heading("", "", "", "", "", "");
}
