package chargehand.book.sqlite;

import chargehand.book.store.Jobs;
import chargehand.book.store.Ledger;
import chargehand.book.store.MethodRecords;
import chargehand.book.store.PartIssues;
import chargehand.book.store.ProgressEntries;
import chargehand.book.store.ShopPages;
import org.jdbi.v3.core.Handle;

/** The tables within one transaction. */
record SqliteLedger(Handle handle) implements Ledger {
    @Override
    public Jobs jobs() {
        return new SqliteJobs(handle);
    }

    @Override
    public PartIssues parts() {
        return new SqliteParts(handle);
    }

    @Override
    public MethodRecords methods() {
        return new SqliteMethods(handle);
    }

    @Override
    public ProgressEntries progress() {
        return new SqliteProgress(handle);
    }

    @Override
    public ShopPages shop() {
        return new SqliteShop(handle);
    }
}
