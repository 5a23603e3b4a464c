package chargehand.book.memory;

import chargehand.book.job.JobNumber;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Numbered rows for each job.
 *
 * @param <R> what a row holds
 */
final class JobRows<R> {
    private final Map<JobNumber, Rows<R>> rows = new HashMap<>();

    JobRows<R> copy() {
        var copy = new JobRows<R>();
        rows.forEach((job, of) -> copy.rows.put(job, of.copy()));
        return copy;
    }

    /** Adds a row under a number that the job's rows do not have yet. */
    void add(JobNumber job, int number, R row) {
        rows.computeIfAbsent(job, absent -> new Rows<>()).add(number, row);
    }

    Optional<R> last(JobNumber job) {
        return Optional.ofNullable(rows.get(job)).flatMap(Rows::last);
    }

    List<R> list(JobNumber job) {
        return Optional.ofNullable(rows.get(job)).map(Rows::list).orElse(List.of());
    }
}
