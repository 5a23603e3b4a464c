package chargehand.book.sqlite;

import chargehand.book.job.JobNumber;
import chargehand.book.json.RecordJson;
import chargehand.book.progress.Deed;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.store.ProgressEntries;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The entries of progress in their table, the deeds as JSON. */
record SqliteProgress(Handle handle) implements ProgressEntries {
    private static final RecordJson<Deed> DEEDS = RecordJson.of(Deed.class);

    @Override
    public void add(ProgressEntry entry) {
        String insert = """
                insert into progress (job, number, method, deed, who, at)
                values (:job, :number, :method, :deed, :who, :at)
                """;
        Columns.sign(handle.createUpdate(insert), entry.by())
                .bind("job", entry.job().number())
                .bind("number", entry.number())
                .bind("method", entry.method())
                .bind("deed", DEEDS.line(entry.deed()))
                .execute();
    }

    @Override
    public List<ProgressEntry> list(JobNumber job) {
        return handle.createQuery("select * from progress where job = :job order by number")
                .bind("job", job.number())
                .map(SqliteProgress::entry)
                .list();
    }

    private static ProgressEntry entry(ResultSet row, StatementContext context) throws SQLException {
        return new ProgressEntry(
                Columns.job(row, "job"),
                row.getInt("method"),
                row.getInt("number"),
                DEEDS.read(row.getString("deed")),
                Columns.by(row));
    }
}
