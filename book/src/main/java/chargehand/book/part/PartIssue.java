package chargehand.book.part;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;

/**
 * The drawing of a job's part as it was saved once. Every saving is kept, the latest one counts.
 *
 * @param job whose part it is
 * @param version counts the savings of this job's drawing, from 1
 * @param text as written, faulty or not
 * @param face what it says of itself
 * @param by who saved it and when
 */
public record PartIssue(JobNumber job, int version, String text, Face face, Signed by) {
    public PartIssue {
        if (version < 1) {
            throw new IllegalArgumentException("savings are counted from 1, not " + version);
        }
    }

    /** Whether it reads as a part without fault. */
    public boolean isDrawn() {
        return face.drawn();
    }
}
