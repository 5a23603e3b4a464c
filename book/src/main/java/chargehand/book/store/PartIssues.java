package chargehand.book.store;

import chargehand.book.job.JobNumber;
import chargehand.book.part.PartIssue;
import java.util.List;
import java.util.Optional;

/** The drawings, saving by saving. */
public interface PartIssues {
    /** Adds a saving; its version must be one that the job's drawing does not have yet. */
    void add(PartIssue issue);

    /** The latest saving; empty before there is any. */
    Optional<PartIssue> latest(JobNumber job);

    /** Every saving, the first one first. */
    List<PartIssue> list(JobNumber job);
}
