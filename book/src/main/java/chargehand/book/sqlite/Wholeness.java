package chargehand.book.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Looks a book's file through: its pages, its indexes, and whether every row refers to one that is there. */
final class Wholeness {
    private Wholeness() {}

    static List<String> faults(Path file) {
        var faults = new ArrayList<String>();
        try (Connection reader = Doors.toRead(file);
                Statement statement = reader.createStatement()) {
            integrity(statement, faults);
            references(statement, faults);
        } catch (SQLException broken) {
            faults.add("The file cannot be looked through to its end: " + broken.getMessage() + ".");
        }
        return faults;
    }

    private static void integrity(Statement statement, List<String> faults) throws SQLException {
        try (ResultSet row = statement.executeQuery("pragma integrity_check")) {
            while (row.next()) {
                if (!row.getString(1).equals("ok")) {
                    faults.add("The file is damaged: " + row.getString(1) + ".");
                }
            }
        }
    }

    private static void references(Statement statement, List<String> faults) throws SQLException {
        try (ResultSet row = statement.executeQuery("pragma foreign_key_check")) {
            while (row.next()) {
                faults.add("Row " + row.getLong(2) + " of table " + row.getString(1) + " refers to a row of table "
                        + row.getString(3) + " that is not there.");
            }
        }
    }
}
