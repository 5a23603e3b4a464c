package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Several of a kind, parted by commas; by semicolons where there is one, so that entries may hold commas. */
record ListOf<T>(Kind<T> entry, int most) implements Kind<List<T>> {
    /** What parts the entries of a list that came as separate entries. */
    static final String CERTAIN = ";";

    @Override
    public String name() {
        return "list, each a " + entry.name();
    }

    @Override
    public List<T> read(String written, LengthUnit unit) {
        String comma = written.contains(CERTAIN) ? CERTAIN : ",";
        List<String> entries = Arrays.stream(written.split(comma))
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
        if (entries.isEmpty() || entries.size() > most) {
            throw new Unreadable("write from 1 to " + most + " entries parted by commas, not " + entries.size() + ".");
        }
        return entries.stream().map(text -> entry.read(text, unit)).toList();
    }

    @Override
    public String echo(List<T> values) {
        return values.stream().map(entry::echo).collect(Collectors.joining(CERTAIN + " "));
    }

    @Override
    public String echo(List<T> values, LengthUnit first) {
        return values.stream().map(value -> entry.echo(value, first)).collect(Collectors.joining(CERTAIN + " "));
    }
}
