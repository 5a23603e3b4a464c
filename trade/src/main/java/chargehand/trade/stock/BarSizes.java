package chargehand.trade.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sizes of round bar that stockists usually keep. */
public final class BarSizes {
    private static final Table TABLE = Table.read(BarSizes.class, "bar-sizes.csv");
    private static final List<Length> METRIC = sizes(LengthUnit.MILLIMETRE);
    private static final List<Length> INCH = sizes(LengthUnit.INCH);

    private BarSizes() {}

    /** Where the sizes come from. */
    public static Source source() {
        return TABLE.source();
    }

    /** The sizes kept in one unit, in rising order. */
    public static List<Length> list(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> METRIC;
            case INCH -> INCH;
        };
    }

    /** The smallest size kept that is not less than this; empty beyond the largest. */
    public static Optional<Length> next(Length least, LengthUnit unit) {
        return list(unit).stream().filter(size -> !size.isLessThan(least)).findFirst();
    }

    private static List<Length> sizes(LengthUnit unit) {
        var sizes = new ArrayList<Length>();
        for (Row row : TABLE.rows()) {
            if (row.text("unit").equals(unit.symbol())) {
                Length step = size(row, "step", unit);
                Length to = size(row, "to", unit);
                for (Length size = size(row, "from", unit); !size.isMoreThan(to); size = size.plus(step)) {
                    sizes.add(size);
                }
            }
        }
        return List.copyOf(sizes);
    }

    private static Length size(Row row, String column, LengthUnit unit) {
        return LengthReader.read(row.text(column), unit).length();
    }
}
