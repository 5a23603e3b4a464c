package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;
import org.assertj.core.data.Offset;

/** Limits and fits by ISO 286. */
final class FitRows {
    private static final double MICRONS = 1000;
    private static final Offset<Double> WHOLE_MICRON = within(1e-6);
    private static final Offset<Double> FIFTH_DECIMAL = within(5e-6);

    private FitRows() {}

    static Topic topic() {
        return Topic.of("iso286.json")
                .asks("IT", FitRows::grade)
                .asks("shaft", row -> zone(row, "shaft"))
                .asks("hole", row -> zone(row, "hole"))
                .asks("fit", FitRows::fit)
                .asks("deviation_formula", FitRows::tabled)
                .asks("formula_example", FitRows::example);
    }

    /** The grade of a range is the width of a hole at its upper bound, which the range includes. */
    private static Query grade(PublishedRow row) {
        String range = row.text("range_mm");
        return Query.of("fit")
                .with("size", range.replaceAll(".* to (\\d+) incl", "$1 mm"))
                .with("hole", "H" + row.text("grade").substring(2))
                .holds(reply -> assertThat(reply.number("hole.upper.mm") * MICRONS)
                        .isCloseTo(row.want("um"), row.within("um")));
    }

    private static Query zone(PublishedRow row, String part) {
        var query = Query.of("fit")
                .with("size", row.text("size_mm") + " mm")
                .with(part, row.text("cls"))
                .gives(part + ".upper.mm", row.want("upper_um") / MICRONS, WHOLE_MICRON)
                .gives(part + ".lower.mm", row.want("lower_um") / MICRONS, WHOLE_MICRON);
        if (row.expects("max_mm")) {
            query.gives(part + ".max.mm", row.want("max_mm"), FIFTH_DECIMAL)
                    .gives(part + ".min.mm", row.want("min_mm"), FIFTH_DECIMAL);
        }
        return query;
    }

    private static Query pair(PublishedRow row) {
        String[] classes = row.text("fit").split("/", -1);
        Query query = Query.of("fit")
                .with("size", row.text("size_mm") + " mm")
                .with("hole", classes[0])
                .with("shaft", classes[1]);
        return deviations(deviations(query, row, "hole"), row, "shaft");
    }

    private static Query deviations(Query query, PublishedRow row, String part) {
        if (!row.expects(part + "_um")) {
            return query;
        }
        List<Double> printed = ((List<?>) row.wanted(part + "_um"))
                .stream().map(each -> ((Number) each).doubleValue() / MICRONS).toList();
        return query.gives(part + ".upper.mm", printed.getFirst(), WHOLE_MICRON)
                .gives(part + ".lower.mm", printed.getLast(), WHOLE_MICRON);
    }

    private static Query fit(PublishedRow row) {
        return pair(row)
                .gives("clearanceMax.mm", row.want("max_clearance_um") / MICRONS, WHOLE_MICRON)
                .gives("clearanceMin.mm", row.want("min_clearance_um") / MICRONS, WHOLE_MICRON)
                .says("kind", row.wanted("type"));
    }

    /** Where the formula and the table of the standard part, the table is what the sum takes. */
    private static Query tabled(PublishedRow row) {
        String range = row.text("range_mm");
        String nearer = row.want("table_um") < 0 ? "upper" : "lower";
        return Query.of("fit")
                .with("size", range.substring(range.indexOf('-') + 1) + " mm")
                .with("shaft", row.text("letter") + "7")
                .gives("shaft." + nearer + ".mm", row.want("table_um") / MICRONS, WHOLE_MICRON);
    }

    /** The page slips by a factor of ten in the deviation of f and misprints i; the limits it ends with are right. */
    private static Query example(PublishedRow row) {
        return pair(row)
                .gives("clearanceMin.mm", row.want("allowance_um") / MICRONS, WHOLE_MICRON)
                .gives("shaft.upper.mm", row.want("f_dev_um") / MICRONS, WHOLE_MICRON)
                .gives("hole.upper.mm", row.want("IT8_um") / MICRONS, WHOLE_MICRON)
                .holds(reply -> assertThat(reply.number("shaft.upper.mm") - reply.number("shaft.lower.mm"))
                        .isCloseTo(row.want("IT7_um") / MICRONS, WHOLE_MICRON));
    }
}
