package chargehand.book.part;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;

/**
 * The drawing of a job's part as it was saved once. Every saving is kept, the latest one counts.
 *
 * @param job whose part it is
 * @param version counts the savings of this job's drawing, from 1
 * @param letter the issue it belongs to; it goes up when work was begun to the issue before
 * @param text as written, faulty or not
 * @param face what a drawing without fault says of itself; blank words while it is faulty
 * @param by who saved it and when
 */
public record PartIssue(JobNumber job, int version, IssueLetter letter, String text, Face face, Signed by) {
    /** The most characters a drawing may have. */
    public static final int LONGEST = 200_000;

    public PartIssue {
        if (version < 1) {
            throw new IllegalArgumentException("savings are counted from 1, not " + version);
        }
    }

    /** Whether it reads as a part without fault. */
    public boolean isDrawn() {
        return face.drawn();
    }

    /**
     * What the job book needs to know of a drawing without reading it again.
     *
     * @param drawn whether it reads as a part without fault
     * @param title the part's title
     * @param drawing its drawing number
     * @param material what it is made of
     */
    public record Face(boolean drawn, String title, String drawing, String material) {
        /** The face of a draft with faults. */
        public static final Face FAULTY = new Face(false, "", "", "");
    }
}
