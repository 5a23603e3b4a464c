package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cutting lists and what to leave on. */
final class StockRows {
    private StockRows() {}

    static Topic topic() {
        return Topic.of("stock.json")
                .asks("cutting_stock", StockRows::cuttingList)
                .asksEach("bar_needed", StockRows::barNeeded)
                .asks("deflection", StockRows::bent)
                .asksEach("allowance", StockRows::allowance);
    }

    private static Query bars(String pieces, String stock, PublishedRow row) {
        return Query.of("bars")
                .with("pieces", pieces)
                .with("stock", stock + " mm")
                .with("kerf", row.text("kerf") + " mm");
    }

    /** First fit decreasing never does better than the plan, nor the bound worse than the plan's own. */
    private static Query cuttingList(PublishedRow row) {
        String pieces = ((List<?>) row.given("items"))
                .stream()
                        .map(item -> ((List<?>) item).getFirst() + " mm x " + ((List<?>) item).getLast())
                        .collect(Collectors.joining(", "));
        int best = (int) row.want("optimum_bars");
        return bars(pieces, row.text("stock"), row)
                .says("used", best)
                .says("proved", true)
                .holds(reply -> {
                    if (row.expects("waste_pct")) {
                        assertThat(reply.number("wastePercent"))
                                .isCloseTo(row.want("waste_pct"), row.within("waste_pct"));
                        double pieced = reply.number("usedLength.mm") - reply.number("waste.mm");
                        assertThat(pieced).isCloseTo(row.want("total"), within(1.0));
                    }
                    if (row.expects("lower_bound")) {
                        assertThat(reply.number("bound")).isGreaterThanOrEqualTo(Math.ceil(row.want("lower_bound")));
                    }
                    if (row.expects("first_fit_decreasing")) {
                        assertThat(reply.number("used")).isLessThanOrEqualTo(row.want("first_fit_decreasing"));
                    }
                });
    }

    private static List<Query> barNeeded(PublishedRow row) {
        double faced = row.number("length") + 2 * row.number("face_allow_each_end");
        String pieces = faced + " mm x " + (int) row.number("pieces");
        double least = row.want("without_last_cut");
        return List.of(
                bars(pieces, String.valueOf(least), row).says("used", 1),
                bars(pieces, least - 0.01 + "", row).says("used", 2),
                bars(pieces, row.wantText("with_drop"), row).says("used", 1));
    }

    /** Half of the force along the cut bends the work, so the cut is given twice the row's: a chip of 0.1 mm² at so much. */
    private static Query bent(PublishedRow row) {
        return Query.of("cut")
                .with("kind", "turn")
                .with("material", "EN8")
                .with("diameter", row.text("d") + " mm")
                .with("depth", "1 mm")
                .with("feeds", "0.1 mm")
                .with("cuttingForce", 2 * row.number("F") / 0.1 + " MPa")
                .with("standsOut", row.text("L") + " mm")
                .with("centre", row.text("support").equals("chuck_and_centre") ? "yes" : "no")
                .gives("bends.mm", row, "y_mm")
                .gives("larger.mm", row, "diameter_error_mm");
    }

    /** What is left on for usual sizes lies within the remembered ranges; a kerf in its range is what a cutting list takes. */
    private static List<Query> allowance(PublishedRow row) {
        return switch (row.text("item")) {
            case "black bar cleanup on diameter mm" -> usual("black bar", "perSide.mm", 2, row);
            case "facing sawn end, each face mm" -> usual("sawn", "faceEach.mm", 1, row);
            case "parting tool width mm" -> usual("black bar", "partingWidth.mm", 1, row);
            case "finish turning left after rough, on diameter mm" -> List.of(finished(row));
            case "saw kerf bandsaw mm", "saw kerf power hacksaw mm" -> kerfs(row);
            default -> List.of();
        };
    }

    private static List<Double> range(PublishedRow row) {
        return ((List<?>) row.wanted("range"))
                .stream().map(each -> ((Number) each).doubleValue()).toList();
    }

    private static List<Query> usual(String form, String figure, int times, PublishedRow row) {
        return Stream.of(10, 25, 40, 60, 80, 100)
                .map(diameter -> Query.of("allowance")
                        .with("form", form)
                        .with("diameter", diameter + " mm")
                        .holds(reply -> assertThat(times * reply.number(figure))
                                .isBetween(range(row).getFirst(), range(row).getLast())))
                .toList();
    }

    private static Query finished(PublishedRow row) {
        return Query.of("cut")
                .with("kind", "turn")
                .with("material", "EN8")
                .with("diameter", "50 mm")
                .with("finish", 1.6)
                .holds(reply -> assertThat(2 * reply.number("depths.0.mm"))
                        .isBetween(range(row).getFirst(), range(row).getLast()));
    }

    /** Two pieces and a kerf just fill a bar. */
    private static List<Query> kerfs(PublishedRow row) {
        return range(row).stream()
                .map(kerf -> Query.of("bars")
                        .with("pieces", "100 mm x 2")
                        .with("stock", 200 + kerf + " mm")
                        .with("kerf", kerf + " mm")
                        .says("used", 1))
                .toList();
    }
}
