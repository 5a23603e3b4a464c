package chargehand.book.sqlite;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.store.BookUnusable;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.statement.SqlStatement;

/** How what many tables have in common stands in their columns. */
final class Columns {
    private Columns() {}

    static JobNumber job(ResultSet row, String column) throws SQLException {
        return new JobNumber(row.getInt(column));
    }

    static Stage stage(ResultSet row, String column) throws SQLException {
        String word = row.getString(column);
        return Stage.parse(word).orElseThrow(() -> new BookUnusable("There is no stage called '" + word + "'."));
    }

    static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    static Signed by(ResultSet row) throws SQLException {
        return new Signed(row.getString("who"), Instant.parse(row.getString("at")));
    }

    /** Binds who and when. */
    static <S extends SqlStatement<S>> S sign(S statement, Signed by) {
        return statement.bind("who", by.who()).bind("at", by.at().toString());
    }
}
