package chargehand.book.memory;

import chargehand.book.store.Ledger;

/** The pages as one transaction sees them. */
record Pages(MemoryJobs jobs, MemoryParts parts, MemoryMethods methods, MemoryProgress progress, MemoryShop shop)
        implements Ledger {

    static Pages empty() {
        MemoryParts parts = new MemoryParts(new JobRows<>());
        MemoryMethods methods = new MemoryMethods(new JobRows<>());
        MemoryJobs jobs = new MemoryJobs(new Rows<>(), new JobRows<>(), parts, methods);
        return new Pages(jobs, parts, methods, new MemoryProgress(new JobRows<>()), new MemoryShop());
    }

    Pages copy() {
        MemoryParts partsCopy = parts.copy();
        MemoryMethods methodsCopy = methods.copy();
        return new Pages(jobs.copy(partsCopy, methodsCopy), partsCopy, methodsCopy, progress.copy(), shop.copy());
    }
}
