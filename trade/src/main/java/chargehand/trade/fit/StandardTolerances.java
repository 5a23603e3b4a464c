package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;

/**
 * The standard tolerance grades IT01 to IT18 for nominal sizes up to 3150 mm. Read from the table of the standard, not
 * from its formulas: the table was rounded by hand and departs from them at both ends.
 */
final class StandardTolerances {
    private static final Table TABLE = Table.read(StandardTolerances.class, "iso286-grades.csv");
    private static final Length LEAST_FOR_COARSE = Length.mm(1);
    private static final int COARSE = 14;

    private StandardTolerances() {}

    static Source source() {
        return TABLE.source();
    }

    static SizeRange range(Length nominal) {
        return SizeRange.of(row(nominal));
    }

    /** The whole tolerance of a grade at a size. */
    static Length of(Length nominal, int grade) {
        String name = ToleranceClass.gradeName(grade);
        if (grade >= COARSE && !nominal.isMoreThan(LEAST_FOR_COARSE)) {
            throw new Unreadable(name + " is not used for sizes up to 1 mm: choose a finer grade.");
        }
        return row(nominal)
                .findNumber(name)
                .map(Microns::of)
                .orElseThrow(() -> new Unreadable(name + " is not given above 500 mm: choose IT1 or coarser."));
    }

    private static Row row(Length nominal) {
        if (!nominal.isPositive()) {
            throw new Unreadable("A size must be more than nothing to have a tolerance.");
        }
        return TABLE.rows().stream()
                .filter(row -> SizeRange.of(row).contains(nominal))
                .findFirst()
                .orElseThrow(() -> new Unreadable("ISO 286 ends at 3150 mm: give a smaller size."));
    }
}
