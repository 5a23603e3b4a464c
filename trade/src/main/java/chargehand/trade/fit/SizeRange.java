package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.trade.table.Row;

/**
 * One of the standard's ranges of nominal size.
 *
 * @param over the bound below, not included
 * @param to the bound above, included: 50 mm lies in "over 30 up to and including 50"
 */
record SizeRange(Length over, Length to) {
    static SizeRange of(Row row) {
        return new SizeRange(Length.mm(row.number("over")), Length.mm(row.number("to")));
    }

    boolean contains(Length size) {
        return size.isMoreThan(over) && !size.isMoreThan(to);
    }

    @Override
    public String toString() {
        return "over " + Math.round(over.mm()) + " up to and including " + Math.round(to.mm()) + " mm";
    }
}
