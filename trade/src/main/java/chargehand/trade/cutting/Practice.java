package chargehand.trade.cutting;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Locale;

/**
 * What a shop starts with for one operation and one kind of tool.
 *
 * @param speedFactor share of the material's turning speed
 * @param feedRough feed for one turn of the work or drill, for one tooth of a milling cutter, when removing metal
 * @param feedFinish the same when finishing
 * @param depthRough most depth of one pass, on the radius
 * @param depthFinish depth left for the last pass
 * @param source where they come from
 */
public record Practice(
        double speedFactor, Length feedRough, Length feedFinish, Length depthRough, Length depthFinish, Source source) {
    private static final Table TABLE = Table.read(Practice.class, "practice.csv");

    /** What is usual for an operation with a kind of tool. */
    public static Practice of(Operation operation, ToolMaterial tool) {
        String wanted = tool.name().toLowerCase(Locale.ROOT);
        return TABLE.rows().stream()
                .filter(row -> row.text("operation").equals(operation.word())
                        && row.text("tool").equals(wanted))
                .findFirst()
                .map(Practice::read)
                .orElseThrow(
                        () -> new IllegalStateException("no practice for " + operation.word() + " with " + wanted));
    }

    private static Practice read(Row row) {
        return new Practice(
                row.number("speed_factor"),
                size(row, "feed_rough"),
                size(row, "feed_finish"),
                size(row, "depth_rough"),
                size(row, "depth_finish"),
                new Source(row.text("source")));
    }

    private static Length size(Row row, String column) {
        return LengthReader.read(row.text(column), LengthUnit.MILLIMETRE).length();
    }
}
