package chargehand.trade.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;

/**
 * Metal to allow on a rough piece.
 *
 * @param perSide on each side, so twice as much on the diameter
 * @param faceEach on each end
 */
public record Allowance(Length perSide, Length faceEach) {
    private static final Table TABLE = Table.read(Allowance.class, "allowances.csv");
    private static final Length SLIM = Length.mm(25);
    private static final Length MIDDLING = Length.mm(50);
    private static final Length SHORTEST_GRIP = Length.mm(20);
    private static final Length LONGEST_GRIP = Length.mm(75);

    /** Where the figures come from. */
    public static final Source SOURCE = TABLE.source();

    /** What is usual for a form and a finished diameter up to 10 m. */
    public static Allowance of(StockForm form, Length diameter) {
        return TABLE.rows().stream()
                .filter(row -> row.text("form").equals(form.word()))
                .filter(row -> !diameter.isMoreThan(size(row, "up_to")))
                .findFirst()
                .map(row -> new Allowance(size(row, "per_side"), size(row, "face_each")))
                .orElseThrow(() -> new IllegalArgumentException("no allowance for " + form.word() + " of " + diameter));
    }

    /** How wide a tool parts off this diameter: 2 mm to 25, 3 mm to 50, 4 mm beyond (common practice). */
    public static Length partingWidth(Length diameter) {
        if (!diameter.isMoreThan(SLIM)) {
            return Length.mm(2);
        }
        return Length.mm(diameter.isMoreThan(MIDDLING) ? 4 : 3);
    }

    /** How much a three-jaw chuck should hold: as much as the diameter, within 20 and 75 mm (common practice). */
    public static Length gripLength(Length diameter) {
        return Length.most(SHORTEST_GRIP, Length.least(LONGEST_GRIP, diameter));
    }

    /** The smallest rough diameter for a finished one. */
    public Length stockDiameter(Length diameter) {
        return diameter.plus(perSide.times(2));
    }

    private static Length size(Row row, String column) {
        return LengthReader.read(row.text(column), LengthUnit.MILLIMETRE).length();
    }
}
