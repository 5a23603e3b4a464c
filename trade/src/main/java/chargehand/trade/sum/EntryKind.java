package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Several values together, written short, each behind its mark ({@code 610 mm x 10}), or by name ({@code length=610 mm |
 * count=10}), which is also how an object of a stream comes here.
 */
record EntryKind(String name, List<Column<?>> columns) implements Kind<Entry> {
    /** What parts the values of an entry written by name. */
    static final String PART = "|";

    /** What stands between a name and its value. */
    static final String IS = "=";

    EntryKind {
        columns = List.copyOf(columns);
    }

    @Override
    public Entry read(String written, LengthUnit unit) {
        Map<String, String> texts = written.contains(IS) ? byName(written) : byMark(written);
        for (Column<?> column : columns) {
            if (column.required() && texts.getOrDefault(column.name(), "").isBlank()) {
                throw new Unreadable("'" + written + "' has no " + column.name() + ": write " + pattern() + ".");
            }
        }
        var values = new LinkedHashMap<Column<?>, Object>();
        for (Column<?> column : columns) {
            String text = texts.getOrDefault(column.name(), "").strip();
            if (!text.isEmpty()) {
                values.put(column, value(column, text, unit));
            }
        }
        return new Entry(values);
    }

    private static Object value(Column<?> column, String text, LengthUnit unit) {
        try {
            return column.kind().read(text, unit);
        } catch (Unreadable unreadable) {
            throw new Unreadable(column.name() + ": " + unreadable.say());
        }
    }

    private Map<String, String> byName(String written) {
        var texts = new LinkedHashMap<String, String>();
        for (String part : written.split("\\" + PART, -1)) {
            int is = part.indexOf(IS);
            String name = is < 0 ? part.strip() : part.substring(0, is).strip();
            if (is < 0 || columns.stream().noneMatch(column -> column.name().equals(name))) {
                throw new Unreadable("'" + name + "' is none of "
                        + String.join(", ", columns.stream().map(Column::name).toList()) + ": write " + pattern()
                        + ".");
            }
            texts.put(name, part.substring(is + 1));
        }
        return texts;
    }

    private Map<String, String> byMark(String written) {
        String text = written.toLowerCase(Locale.ROOT).replace('×', 'x');
        if (text.length() != written.length()) {
            throw new Unreadable("write " + pattern() + ".");
        }
        var texts = new LinkedHashMap<String, String>();
        int column = 0;
        int from = 0;
        while (true) {
            Next next = next(text, column, from);
            texts.put(columns.get(column).name(), written.substring(from, next.at()));
            if (next.column() == columns.size()) {
                return texts;
            }
            column = next.column();
            from = next.at() + columns.get(column).mark().length();
        }
    }

    /** Where the next value starts: the first mark, the longest where several start at one place. */
    private Next next(String text, int column, int from) {
        var best = new Next(columns.size(), text.length());
        int length = 0;
        for (int i = column + 1; i < columns.size(); i++) {
            String mark = columns.get(i).mark();
            int at = text.indexOf(mark, from);
            if (at >= 0 && (at < best.at() || (at == best.at() && mark.length() > length))) {
                best = new Next(i, at);
                length = mark.length();
            }
        }
        return best;
    }

    private record Next(int column, int at) {}

    /** How an entry is written, such as {@code length x count}. */
    private String pattern() {
        var pattern = new StringBuilder();
        for (Column<?> column : columns) {
            String one = column.mark().isEmpty() ? column.name() : " " + column.mark() + " " + column.name();
            pattern.append(column.required() ? one : " [" + one.strip() + "]");
        }
        return pattern.toString().strip();
    }

    @Override
    public String echo(Entry value) {
        return echo(value, LengthUnit.MILLIMETRE);
    }

    @Override
    public String echo(Entry value, LengthUnit first) {
        var said = new StringBuilder();
        for (Column<?> column : columns) {
            said.append(echo(column, value, first));
        }
        return said.toString().strip();
    }

    private static <T> String echo(Column<T> column, Entry entry, LengthUnit first) {
        return entry.find(column)
                .map(value -> " " + column.mark() + " " + column.kind().echo(value, first))
                .orElse("");
    }
}
