package chargehand.book.sqlite;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Move;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.store.Jobs;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jdbi.v3.core.statement.Update;

/** The jobs and their moves in their tables. */
record SqliteJobs(Handle handle) implements Jobs {
    @Override
    public Optional<JobNumber> newest() {
        return handle.createQuery("select number from job order by number desc limit 1")
                .mapTo(Integer.class)
                .findOne()
                .map(JobNumber::new);
    }

    @Override
    public void add(Job job) {
        write(job, """
                insert into job (number, asset, wants, asker, count, wanted_by, asked_on, stage, waits_for, stopped_at, version)
                values (:number, :asset, :wants, :asker, :count, :wantedBy, :askedOn, :stage, :waitsFor, :stoppedAt, :version)
                """);
    }

    @Override
    public void replace(Job job) {
        int replaced = write(job, """
                update job set asset = :asset, wants = :wants, asker = :asker, count = :count, wanted_by = :wantedBy,
                  asked_on = :askedOn, stage = :stage, waits_for = :waitsFor, stopped_at = :stoppedAt, version = :version
                where number = :number
                """);
        if (replaced != 1) {
            throw new IllegalStateException("there is no job " + job.number());
        }
    }

    private int write(Job job, String sql) {
        Request request = job.request();
        Update update = handle.createUpdate(sql)
                .bind("number", job.number().number())
                .bind("asset", request.asset())
                .bind("wants", request.wants())
                .bind("asker", request.asker())
                .bind("count", request.count())
                .bind("wantedBy", request.wantedBy().map(LocalDate::toString).orElse(null))
                .bind("askedOn", job.askedOn().toString())
                .bind("version", job.version());
        return stand(update, job.standing()).execute();
    }

    private static Update stand(Update update, Standing standing) {
        boolean stopped = standing.stage() == Stage.STOPPED;
        return update.bind("stage", standing.stage().word())
                .bind("waitsFor", standing.waitsFor().orElse(null))
                .bind("stoppedAt", stopped ? standing.work().word() : null);
    }

    @Override
    public Optional<Job> find(JobNumber number) {
        return handle.createQuery("select * from job where number = :number")
                .bind("number", number.number())
                .map(SqliteJobs::job)
                .findOne();
    }

    static Job job(ResultSet row, StatementContext context) throws SQLException {
        Request request = new Request(
                row.getString("asset"),
                row.getString("wants"),
                row.getString("asker"),
                row.getInt("count"),
                Columns.text(row, "wanted_by").map(LocalDate::parse));
        return new Job(
                Columns.job(row, "number"),
                request,
                LocalDate.parse(row.getString("asked_on")),
                standing(row),
                row.getInt("version"));
    }

    private static Standing standing(ResultSet row) throws SQLException {
        Stage stage = Columns.stage(row, "stage");
        return stage == Stage.STOPPED
                ? new Standing.Stopped(row.getString("waits_for"), Columns.stage(row, "stopped_at"))
                : new Standing.At(stage);
    }

    @Override
    public JobPage list(JobQuery query) {
        return new JobSearch(handle, query).page();
    }

    @Override
    public Map<Stage, Integer> counts() {
        var counts = new EnumMap<Stage, Integer>(Stage.class);
        handle.createQuery("select stage, count(*) as jobs from job group by stage")
                .map((row, context) -> Map.entry(Columns.stage(row, "stage"), row.getInt("jobs")))
                .forEach(count -> counts.put(count.getKey(), count.getValue()));
        return counts;
    }

    @Override
    public void add(Move move) {
        String insert = """
                insert into move (job, number, from_stage, to_stage, note, who, at)
                values (:job, (select count(*) + 1 from move where job = :job), :from, :to, :note, :who, :at)
                """;
        Columns.sign(handle.createUpdate(insert), move.by())
                .bind("job", move.job().number())
                .bind("from", move.from().word())
                .bind("to", move.to().word())
                .bind("note", move.note())
                .execute();
    }

    @Override
    public List<Move> moves(JobNumber number) {
        return handle.createQuery("select * from move where job = :job order by number")
                .bind("job", number.number())
                .map(SqliteJobs::move)
                .list();
    }

    private static Move move(ResultSet row, StatementContext context) throws SQLException {
        return new Move(
                Columns.job(row, "job"),
                Columns.stage(row, "from_stage"),
                Columns.stage(row, "to_stage"),
                row.getString("note"),
                Columns.by(row));
    }
}
