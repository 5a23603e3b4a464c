package chargehand.book.sqlite;

import chargehand.book.job.JobLine;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Stage;
import chargehand.book.store.Words;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;

/** Finds the jobs that a query asks for. */
final class JobSearch {
    private final Handle handle;
    private final JobQuery query;
    private final List<String> words;

    JobSearch(Handle handle, JobQuery query) {
        this.handle = handle;
        this.query = query;
        this.words = Words.of(query.text()).words();
    }

    JobPage page() {
        return query.stages().isEmpty() ? new JobPage(List.of(), 0, query) : new JobPage(lines(), total(), query);
    }

    private int total() {
        return ask("select count(*) from job where " + condition())
                .mapTo(Integer.class)
                .one();
    }

    /** Looks up the latest drawing and planning of the jobs on the page only. */
    private List<JobLine> lines() {
        String sql = "with page as (select * from job where " + condition() + " order by " + order()
                + " limit :size offset :before) "
                + """
                select page.*, part.title, part.drawn, method.found
                from page
                left join part on part.job = page.number
                  and part.version = (select max(version) from part as later where later.job = page.number)
                left join method on method.job = page.number
                  and method.number = (select max(number) from method as later where later.job = page.number)
                order by\s""" + order();
        return ask(sql).bind("size", query.size())
                .bind("before", query.before())
                .map(JobSearch::line)
                .list();
    }

    private static JobLine line(ResultSet row, StatementContext context) throws SQLException {
        return new JobLine(
                SqliteJobs.job(row, context),
                Columns.text(row, "title").orElse(""),
                row.getBoolean("drawn"),
                row.getBoolean("found"));
    }

    private String condition() {
        String stages = "stage in (<stages>)";
        return words.isEmpty()
                ? stages
                : stages + " and job.number in (select rowid from job_words where job_words match :words)";
    }

    private String order() {
        return switch (query.order()) {
            case NEWEST -> "number desc";
            case WANTED -> "wanted_by is null, wanted_by, number";
        };
    }

    private Query ask(String sql) {
        Query ask = handle.createQuery(sql)
                .bindList("stages", query.stages().stream().map(Stage::word).toList());
        return words.isEmpty() ? ask : ask.bind("words", match());
    }

    /** Every word as the beginning of a word, in the notation of the search index. */
    private String match() {
        return words.stream().map(word -> "\"" + word + "\"*").collect(Collectors.joining(" "));
    }
}
