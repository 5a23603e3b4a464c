package chargehand.trade.published;

import chargehand.trade.PublishedRow;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The kinds of published rows that no sum answers, and why. */
final class Unasked {
    private static final List<Row> ROWS =
            Table.read(PublishedRow.class, "published/no-sum.csv").rows();

    private Unasked() {}

    static Optional<String> why(Topic topic, PublishedRow row) {
        return ROWS.stream()
                .filter(each -> name(each).equals(name(topic, row)))
                .map(each -> each.text("why"))
                .findFirst();
    }

    static Set<String> kinds() {
        return ROWS.stream().map(Unasked::name).collect(Collectors.toSet());
    }

    /** The kinds of all rows without a question. */
    static Set<String> kindsMet(List<Topic> topics) {
        return topics.stream()
                .flatMap(topic -> topic.rows().stream()
                        .filter(row -> topic.queries(row).isEmpty())
                        .map(row -> name(topic, row)))
                .collect(Collectors.toSet());
    }

    static String name(Topic topic, PublishedRow row) {
        return topic.name() + " " + row.kind();
    }

    private static String name(Row row) {
        return row.text("topic") + " " + row.text("kind");
    }
}
