package chargehand.trade.published;

import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The rows of one subject, and how each kind of them is asked. */
final class Topic {
    private final String name;
    private final List<PublishedRow> rows;
    private final Map<String, Function<PublishedRow, List<Query>>> asked = new LinkedHashMap<>();

    private Topic(String name, List<PublishedRow> rows) {
        this.name = name;
        this.rows = new ArrayList<>(rows);
    }

    /** The worked examples of a resource under {@code published/}. */
    static Topic of(String resource) {
        return new Topic(resource.replace(".json", ""), PublishedRow.all(resource));
    }

    static Topic named(String name) {
        return new Topic(name, List.of());
    }

    /** With the rows of a printed table beside a class; its name is their kind. */
    Topic table(Class<?> owner, String resource) {
        rows.addAll(PublishedRow.table(owner, resource));
        return this;
    }

    /** Rows of this kind ask one sum. */
    Topic asks(String kind, Function<PublishedRow, Query> query) {
        return asksEach(kind, row -> List.of(query.apply(row)));
    }

    /** Rows of this kind ask one sum several times, or several sums. */
    Topic asksEach(String kind, Function<PublishedRow, List<Query>> queries) {
        asked.put(kind, queries);
        return this;
    }

    String name() {
        return name;
    }

    List<PublishedRow> rows() {
        return rows;
    }

    /** The questions of a row; none where it bears on no sum. */
    List<Query> queries(PublishedRow row) {
        Function<PublishedRow, List<Query>> queries = asked.get(row.kind());
        return queries == null ? List.of() : queries.apply(row);
    }
}
