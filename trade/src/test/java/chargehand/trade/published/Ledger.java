package chargehand.trade.published;

import chargehand.trade.PublishedRow;
import chargehand.trade.PublishedRow.Standing;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The counts of {@code docs/coverage.md}: rows by the sum that answers them and by how they were come by. */
final class Ledger {
    private static final Pattern SUM =
            Pattern.compile("(?m)^\\| (`([a-z-]+)`|\\*\\*all\\*\\*) \\|(?:[^|\n]*\\|){4}(.*)$");
    private static final String UNASKED = """
            | rows | kind | seen | partly | formula | memory | why no sum answers them |
            | --- | --- | ---: | ---: | ---: | ---: | --- |
            """;

    private final List<Topic> topics;

    Ledger(List<Topic> topics) {
        this.topics = topics;
    }

    /** The ledger's text with today's counts in its tables; its words stay. */
    String into(String text) {
        String counted = SUM.matcher(text).replaceAll(this::line);
        int from = counted.indexOf(UNASKED) + UNASKED.length();
        int to = counted.indexOf("\n\n", from);
        if (from < UNASKED.length() || to < 0) {
            throw new IllegalStateException("the ledger has lost the table of rows that no sum answers");
        }
        return counted.substring(0, from) + unasked() + counted.substring(to);
    }

    private String line(MatchResult found) {
        String sum = found.group(2);
        Map<Standing, Long> counts = sum == null ? count(query -> true) : count(query -> query.equals(sum));
        boolean all = sum == null;
        return Matcher.quoteReplacement("| " + found.group(1) + " |" + cells(counts, all) + found.group(3));
    }

    private static String cells(Map<Standing, Long> counts, boolean bold) {
        String mark = bold ? "**" : "";
        return Stream.of(Standing.values())
                .map(standing -> " " + mark + counts.getOrDefault(standing, 0L) + mark + " |")
                .collect(Collectors.joining());
    }

    /** A row counts once for a sum, however often it asks it, and for each sum that it asks. */
    private Map<Standing, Long> count(Predicate<String> sum) {
        var counts = new EnumMap<Standing, Long>(Standing.class);
        for (Topic topic : topics) {
            for (PublishedRow row : topic.rows()) {
                long sums = topic.queries(row).stream()
                        .map(Query::sum)
                        .distinct()
                        .filter(sum)
                        .count();
                counts.merge(row.standing(), sums, Long::sum);
            }
        }
        return counts;
    }

    private String unasked() {
        var counts = new TreeMap<String, Map<Standing, Long>>();
        for (Topic topic : topics) {
            for (PublishedRow row : topic.rows()) {
                if (topic.queries(row).isEmpty()) {
                    counts.computeIfAbsent(
                                    "| " + topic.name() + " | " + row.kind() + " |",
                                    kind -> new EnumMap<>(Standing.class))
                            .merge(row.standing(), 1L, Long::sum);
                }
            }
        }
        var lines = new TreeMap<String, String>();
        for (Topic topic : topics) {
            for (PublishedRow row : topic.rows()) {
                String head = "| " + topic.name() + " | " + row.kind() + " |";
                if (counts.containsKey(head)) {
                    String why = Unasked.why(topic, row).orElse("");
                    lines.put(head, head + cells(counts.get(head), false) + " " + why + " |");
                }
            }
        }
        return String.join("\n", lines.values());
    }
}
