package chargehand.book.memory;

import chargehand.book.job.JobNumber;
import chargehand.book.part.PartIssue;
import chargehand.book.store.PartIssues;
import java.util.List;
import java.util.Optional;

/** The drawings in memory. */
record MemoryParts(JobRows<PartIssue> rows) implements PartIssues {
    MemoryParts copy() {
        return new MemoryParts(rows.copy());
    }

    @Override
    public void add(PartIssue issue) {
        rows.add(issue.job(), issue.version(), issue);
    }

    @Override
    public Optional<PartIssue> latest(JobNumber job) {
        return rows.last(job);
    }

    @Override
    public List<PartIssue> list(JobNumber job) {
        return rows.list(job);
    }
}
