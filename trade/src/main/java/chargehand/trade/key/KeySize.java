package chargehand.trade.key;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;

/**
 * A parallel key of a standard and its keyways.
 *
 * @param width of the key
 * @param height of the key
 * @param shaftDepth of the keyway in the shaft
 * @param hubDepth of the keyway in the hub
 */
public record KeySize(Length width, Length height, Length shaftDepth, Length hubDepth) {
    private static final Table TABLE = Table.read(KeySize.class, "key-sizes.csv");

    /** The standards that are tabled. */
    public enum Standard {
        METRIC("metric", LengthUnit.MILLIMETRE),
        IMPERIAL("imperial", LengthUnit.INCH);

        private final String word;
        private final LengthUnit unit;

        Standard(String word, LengthUnit unit) {
            this.word = word;
            this.unit = unit;
        }

        /** The word it is asked by. */
        public String word() {
            return word;
        }
    }

    /** Where the sizes come from. */
    public static Source source() {
        return TABLE.source();
    }

    /** The key for a shaft of this diameter; empty where the standard has none. */
    public static Optional<KeySize> find(Standard standard, Length shaft) {
        return TABLE.rows().stream()
                .filter(row -> row.text("standard").equals(standard.word()))
                .filter(row ->
                        shaft.isMoreThan(size(row, "over", standard)) && !shaft.isMoreThan(size(row, "to", standard)))
                .findFirst()
                .map(row -> new KeySize(
                        size(row, "width", standard),
                        size(row, "height", standard),
                        size(row, "shaft_depth", standard),
                        size(row, "hub_depth", standard)));
    }

    private static Length size(Row row, String column, Standard standard) {
        return LengthReader.read(row.text(column), standard.unit).length();
    }
}
