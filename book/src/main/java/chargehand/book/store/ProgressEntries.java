package chargehand.book.store;

import chargehand.book.job.JobNumber;
import chargehand.book.progress.ProgressEntry;
import java.util.List;

/** The entries of progress. They are only ever added. */
public interface ProgressEntries {
    /** Adds an entry under a number that the job's entries do not have yet. */
    void add(ProgressEntry entry);

    /** Every entry of a job, by whatever method, in the order they were made. */
    List<ProgressEntry> list(JobNumber job);
}
