package chargehand.trade.gear;

import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;

/** The set of eight formed cutters for involute teeth, by number of teeth. */
public final class Cutters {
    private static final Table TABLE = Table.read(Cutters.class, "cutters.csv");

    private Cutters() {}

    /** The number of the cutter, 8 for 12 and 13 teeth to 1 for 135 and more; empty for fewer than 12. */
    public static Optional<Integer> number(int teeth) {
        Optional<Integer> number = Optional.empty();
        for (Row row : TABLE.rows()) {
            if (row.number("from") <= teeth) {
                number = Optional.of((int) row.number("number"));
            }
        }
        return number;
    }

    /** The same cutter where the maker counts the other way, as some do for modules. */
    static int otherWay(int number) {
        return TABLE.rows().size() + 1 - number;
    }

    static Source source() {
        return TABLE.source();
    }
}
