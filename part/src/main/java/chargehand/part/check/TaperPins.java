package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Part;
import chargehand.trade.table.Table;
import java.util.List;

/** The taper pins of 1 in 50 that are made. */
final class TaperPins {
    private static final List<Length> NOMINAL = Table.read(Part.class, "iso2339-taper-pins.csv").rows().stream()
            .map(row -> Length.mm(row.number("nominal")))
            .toList();

    private TaperPins() {}

    static boolean isMade(Length nominal) {
        return NOMINAL.contains(nominal);
    }

    /** The one nearest to a size. */
    static Length nearest(Length size) {
        return NOMINAL.stream()
                .reduce((one, other) ->
                        other.minus(size).abs().isLessThan(one.minus(size).abs()) ? other : one)
                .orElseThrow();
    }
}
