package chargehand.book.sqlite;

import chargehand.book.job.JobNumber;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.store.PartIssues;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The drawings in their table. */
record SqliteParts(Handle handle) implements PartIssues {
    @Override
    public void add(PartIssue issue) {
        String insert = """
                insert into part (job, version, text, drawn, title, drawing, issue, material, who, at)
                values (:job, :version, :text, :drawn, :title, :drawing, :issue, :material, :who, :at)
                """;
        Columns.sign(handle.createUpdate(insert), issue.by())
                .bind("job", issue.job().number())
                .bind("version", issue.version())
                .bind("text", issue.text())
                .bind("drawn", issue.face().drawn())
                .bind("title", issue.face().title())
                .bind("drawing", issue.face().drawing())
                .bind("issue", issue.face().issue())
                .bind("material", issue.face().material())
                .execute();
    }

    @Override
    public Optional<PartIssue> latest(JobNumber job) {
        return handle.createQuery("select * from part where job = :job order by version desc limit 1")
                .bind("job", job.number())
                .map(SqliteParts::issue)
                .findOne();
    }

    @Override
    public List<PartIssue> list(JobNumber job) {
        return handle.createQuery("select * from part where job = :job order by version")
                .bind("job", job.number())
                .map(SqliteParts::issue)
                .list();
    }

    private static PartIssue issue(ResultSet row, StatementContext context) throws SQLException {
        Face face = new Face(
                row.getBoolean("drawn"),
                row.getString("title"),
                row.getString("drawing"),
                row.getString("issue"),
                row.getString("material"));
        return new PartIssue(
                Columns.job(row, "job"), row.getInt("version"), row.getString("text"), face, Columns.by(row));
    }
}
