package chargehand.book.store;

import chargehand.book.job.JobNumber;
import chargehand.book.method.MethodRecord;
import java.util.List;
import java.util.Optional;

/** The plannings and the methods they found. */
public interface MethodRecords {
    /** Adds a planning under a number that the job's plannings do not have yet. */
    void add(MethodRecord planned);

    /** The latest planning; empty before there is any. */
    Optional<MethodRecord> latest(JobNumber job);

    /** Every planning, the first one first. */
    List<MethodRecord> list(JobNumber job);
}
