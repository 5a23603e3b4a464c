package chargehand.trade.taper;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Optional;

/**
 * The machine tapers: Morse, Brown &amp; Sharpe, Jarno, Jacobs, metric and the 7 in 24 of milling machines. Found as they
 * are written: {@code MT 3}, {@code No. 3 Morse}, {@code B&S 7}, {@code Jarno 10}, {@code 7/24 no 40}.
 */
public final class StandardTapers {
    private static final List<StandardTaper> TABLED =
            Table.read(StandardTapers.class, "standard-tapers.csv").rows().stream()
                    .map(StandardTapers::read)
                    .toList();
    private static final int SMALLEST_JARNO = 2;
    private static final int LARGEST_JARNO = 20;

    private StandardTapers() {}

    /** Every standard taper. */
    public static List<StandardTaper> list() {
        return TABLED;
    }

    /**
     * The taper of this name.
     *
     * @throws Unreadable when there is no such taper
     */
    public static StandardTaper get(String written) {
        return find(written)
                .orElseThrow(() -> new Unreadable("'" + written.trim()
                        + "' is not a machine taper in the table: write MT 3, B&S 7, Jarno 10, Jacobs 6, metric 80 or"
                        + " 7/24 40."));
    }

    /** The taper of this name, if there is one. */
    public static Optional<StandardTaper> find(String written) {
        return TaperName.parse(written).flatMap(StandardTapers::find);
    }

    private static Optional<StandardTaper> find(TaperName name) {
        return switch (name.series()) {
            case JARNO -> jarno(name.size());
            case MORSE, BROWN_AND_SHARPE, JACOBS, METRIC, MILLING ->
                TABLED.stream()
                        .filter(taper -> taper.name().equals(name.toString()))
                        .findFirst();
        };
    }

    private static StandardTaper read(Row row) {
        var taper = Taper.perFoot(Length.in(row.number("per_foot")));
        Optional<Length> small = size(row, "small");
        Optional<Length> length = size(row, "length");
        Length large =
                size(row, "large").orElseGet(() -> small.orElseThrow().plus(taper.changeOver(length.orElseThrow())));
        Optional<Length> end = small.or(() -> length.map(plug -> large.minus(taper.changeOver(plug))));
        return new StandardTaper(
                row.text("family") + " " + row.text("size"), taper, large, end, length, new Source(row.text("source")));
    }

    private static Optional<Length> size(Row row, String column) {
        String text = row.text(column);
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(LengthReader.read(text, LengthUnit.INCH).length());
    }

    /** A Jarno taper by its number: 0.6 in to the foot, as many eighths, tenths and halves of an inch as the number. */
    private static Optional<StandardTaper> jarno(int number) {
        if (number < SMALLEST_JARNO || number > LARGEST_JARNO) {
            return Optional.empty();
        }
        return Optional.of(new StandardTaper(
                "Jarno " + number,
                Taper.oneIn(20),
                Length.inch(number, 8),
                Optional.of(Length.inch(number, 10)),
                Optional.of(Length.inch(number, 2)),
                Source.published("Jarno's rule: large end n/8 in, small end n/10 in, length n/2 in")));
    }
}
