package chargehand.timing;

import java.util.ArrayList;
import java.util.List;

/** What was measured, as a page of tables: printed as it is taken, and kept at the end. */
final class Report {
    private final List<String> lines = new ArrayList<>();

    void say(String line) {
        lines.add(line);
        System.out.println(line);
    }

    /** A table of single figures. */
    void table(List<Measured> measured) {
        row(List.of("what", "median", "runs", "aim", "beside it", "load"));
        row(List.of("---", "---", "---", "---", "---", "---"));
        for (Measured line : measured) {
            row(List.of(line.what(), line.took(), line.runs(), line.aim(), line.beside(), line.load()));
        }
    }

    void row(List<String> cells) {
        say("| " + String.join(" | ", cells) + " |");
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }
}
