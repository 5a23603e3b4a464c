package chargehand.book.sqlite;

import chargehand.book.job.JobNumber;
import chargehand.book.json.RecordJson;
import chargehand.book.method.Basis;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.store.MethodRecords;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The plannings in their table, what they found as JSON. */
record SqliteMethods(Handle handle) implements MethodRecords {
    private static final RecordJson<Finding> FINDINGS = RecordJson.of(Finding.class);

    @Override
    public void add(MethodRecord planned) {
        String insert = """
                insert into method (job, number, issue, version, count, edition, wishes, found, finding, who, at)
                values (:job, :number, :issue, :version, :count, :edition, :wishes, :found, :finding, :who, :at)
                """;
        Basis basis = planned.basis();
        Columns.sign(handle.createUpdate(insert), planned.by())
                .bind("job", planned.job().number())
                .bind("number", planned.number())
                .bind("issue", basis.issue())
                .bind("version", basis.version())
                .bind("count", basis.count())
                .bind("edition", basis.edition())
                .bind("wishes", String.join("\n", basis.wishes()))
                .bind("found", planned.isFound())
                .bind("finding", FINDINGS.line(planned.finding()))
                .execute();
    }

    @Override
    public Optional<MethodRecord> latest(JobNumber job) {
        return handle.createQuery("select * from method where job = :job order by number desc limit 1")
                .bind("job", job.number())
                .map(SqliteMethods::planned)
                .findOne();
    }

    @Override
    public List<MethodRecord> list(JobNumber job) {
        return handle.createQuery("select * from method where job = :job order by number")
                .bind("job", job.number())
                .map(SqliteMethods::planned)
                .list();
    }

    private static MethodRecord planned(ResultSet row, StatementContext context) throws SQLException {
        Basis basis = new Basis(
                row.getString("issue"),
                row.getInt("version"),
                row.getInt("count"),
                row.getInt("edition"),
                row.getString("wishes").lines().toList());
        return new MethodRecord(
                Columns.job(row, "job"),
                row.getInt("number"),
                basis,
                FINDINGS.read(row.getString("finding")),
                Columns.by(row));
    }
}
