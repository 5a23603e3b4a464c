package chargehand.book.memory;

import chargehand.book.job.JobNumber;
import chargehand.book.method.MethodRecord;
import chargehand.book.store.MethodRecords;
import java.util.List;
import java.util.Optional;

/** The plannings in memory. */
record MemoryMethods(JobRows<MethodRecord> rows) implements MethodRecords {
    MemoryMethods copy() {
        return new MemoryMethods(rows.copy());
    }

    @Override
    public void add(MethodRecord planned) {
        rows.add(planned.job(), planned.number(), planned);
    }

    @Override
    public Optional<MethodRecord> latest(JobNumber job) {
        return rows.last(job);
    }

    @Override
    public List<MethodRecord> list(JobNumber job) {
        return rows.list(job);
    }
}
