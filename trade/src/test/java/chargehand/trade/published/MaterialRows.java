package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.PublishedRow;
import java.util.List;

/** What the tables of materials say, asked through the sums that rest on them. */
final class MaterialRows {
    /** Densities of one name differ from table to table: a stockist reckons stainless at 8034 kg/m³, EN 10088 304 at 7900. */
    private static final double STOCKISTS_PER_CENT = 1.7;

    private static final double DENSITY_PER_CENT = 1;
    private static final double EXPANSION_PER_CENT = 5;

    /** The sums hold the weakest usual condition of a name, which is not so far below any published least. */
    private static final double WEAKEST = 0.6;

    private static final double AREA_OF_M10 = 57.98947542534723;

    private MaterialRows() {}

    static Topic topic() {
        return Topic.of("materials.json")
                .asks("material", MaterialRows::strength)
                .asks("density", MaterialRows::density)
                .asks("expansion_e6_per_K", MaterialRows::expansion)
                .asks("mass_round_factor", row -> factor(row, "round"))
                .asks("mass_hex_factor", row -> factor(row, "hexagon"))
                .asks("mass_square_factor", row -> factor(row, "square"))
                .asks("round_bar_mass", MaterialRows::bar)
                .asks(
                        "blank_mass",
                        row -> weight(row.text("d") + " mm x " + row.text("L") + " mm", "CZ121")
                                .gives("mass.kg", row, "kg"))
                .asks("steam_water_suitability", MaterialRows::steam);
    }

    /** A bolt of the material breaks at its tensile strength and is loaded up to its proof stress. */
    private static Query strength(PublishedRow row) {
        String name = row.text("material").replaceAll(" (cold|hot|bar|sand|GZ|GS|M/).*", "");
        double tensile = least(row, row.expects("Rm") ? "Rm" : "Rm_min");
        return Query.of("bolt").with("thread", "M10").with("material", name).holds(reply -> {
            assertThat(reply.number("breaking.N") / AREA_OF_M10).isBetween(WEAKEST * tensile, tensile * (1 + 1e-4));
            String proof = row.expects("Re") ? "Re" : "Rp02";
            if (row.expects(proof)) {
                assertThat(reply.number("capacity.N") / AREA_OF_M10)
                        .isBetween(0.4 * least(row, proof), least(row, proof) * (1 + 1e-4));
            }
        });
    }

    private static double least(PublishedRow row, String figure) {
        Object value = row.wanted(figure);
        Object first = value instanceof List<?> range ? range.getFirst() : value;
        return ((Number) first).doubleValue();
    }

    private static Query weight(String sizes, String material) {
        return Query.of("weight").with("shape", "round").with("sizes", sizes).with("material", material);
    }

    private static Query density(PublishedRow row) {
        return weight("100 mm x 1000 mm", row.text("material").replace("carbon steel", "mild steel"))
                .holds(reply -> assertThat(reply.number("mass.kg") / reply.number("volume.mm3") * 1e9)
                        .isCloseTo(row.want("rho"), withinPercentage(DENSITY_PER_CENT)));
    }

    private static Query expansion(PublishedRow row) {
        String name = row.text("material").replaceAll("/.*", "").replace("carbon steel", "mild steel");
        return Query.of("expand")
                .with("size", "1000 mm")
                .with("material", name)
                .with("to", "120 C")
                .holds(reply -> assertThat(reply.number("change.mm") * 1e6 / 100 / 1000)
                        .isCloseTo(row.want("alpha"), withinPercentage(EXPANSION_PER_CENT)));
    }

    /** Stockists give kilograms a metre for one millimetre; asked here for a hundred, since a factor goes with the square. */
    private static Query factor(PublishedRow row, String shape) {
        return Query.of("weight")
                .with("shape", shape)
                .with("sizes", "100 mm x 1000 mm")
                .with("material", row.text("material"))
                .holds(reply -> assertThat(reply.number("mass.kg"))
                        .isCloseTo(row.want("kg_per_m") * 10_000, withinPercentage(STOCKISTS_PER_CENT)));
    }

    /** For 32 mm the page repeats the mass of 25 mm; the row holds the right one. */
    private static Query bar(PublishedRow row) {
        return weight(row.text("d_mm") + " mm x 1000 mm", "mild steel")
                .gives("mass.kg", row, "kg_per_m")
                .gives("volume.mm3", 1000 * row.want("area"), within(1000 * row.within("area").value));
    }

    /** What will not stand steam or hot water is said beside the wall. */
    private static Query steam(PublishedRow row) {
        boolean suits = row.wanted("suitable").equals(true);
        return Query.of("wall")
                .with("inside", "25 mm")
                .with("outside", "40 mm")
                .with("pressure", "10 bar")
                .with("material", row.text("alloy").replaceAll("[ /(].*", ""))
                .holds(reply -> assertThat(reply.cautions().contains("steam")).isEqualTo(!suits));
    }
}
