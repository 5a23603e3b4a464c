package chargehand.book.memory;

import chargehand.book.job.JobNumber;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.store.ProgressEntries;
import java.util.List;

/** The entries of progress in memory. */
record MemoryProgress(JobRows<ProgressEntry> rows) implements ProgressEntries {
    MemoryProgress copy() {
        return new MemoryProgress(rows.copy());
    }

    @Override
    public void add(ProgressEntry entry) {
        rows.add(entry.job(), entry.number(), entry);
    }

    @Override
    public List<ProgressEntry> list(JobNumber job) {
        return rows.list(job);
    }
}
