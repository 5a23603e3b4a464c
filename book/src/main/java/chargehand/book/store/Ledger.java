package chargehand.book.store;

/** The book's records within one transaction; of no use after it. */
public interface Ledger {
    Jobs jobs();

    PartIssues parts();

    MethodRecords methods();

    ProgressEntries progress();

    ShopPages shop();
}
