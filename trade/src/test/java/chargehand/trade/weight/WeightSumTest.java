package chargehand.trade.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Length;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class WeightSumTest {
    /** Densities of one name differ from table to table: the stockist reckons stainless at 8034 kg/m³, EN 10088 304 at 7900. */
    private static final Percentage TABLES_DIFFER = withinPercentage(1.7);

    static List<PublishedRow> factors() {
        return PublishedRow.of("materials.json", "mass_round_factor", "mass_hex_factor", "mass_square_factor");
    }

    static List<PublishedRow> bars() {
        return PublishedRow.of("materials.json", "round_bar_mass");
    }

    private static double kilograms(Ask ask, String path) {
        return ((Figure.OfMass) ask.figure(path)).mass().kilograms();
    }

    /** Stockists give kilograms a metre for one millimetre; asked here for a hundred, since a factor goes with the square. */
    @ParameterizedTest
    @MethodSource("factors")
    void mass_ofOneMetre_isTheStockistsFactor(PublishedRow row) {
        String shape = switch (row.kind()) {
            case "mass_round_factor" -> "round";
            case "mass_hex_factor" -> "hexagon";
            default -> "square";
        };
        Ask ask = Ask.of("weight", "shape", shape, "sizes", "100 mm x 1 m", "material", row.text("material"));

        assertThat(kilograms(ask, "mass")).isCloseTo(row.want("kg_per_m") * 10_000, TABLES_DIFFER);
    }

    @ParameterizedTest
    @MethodSource("bars")
    void mass_ofSteelBar_isAsInTheMassTable(PublishedRow row) {
        Ask ask = Ask.of("weight", "shape", "round", "sizes", row.text("d_mm") + " x 1000", "material", "mild steel");

        assertThat(kilograms(ask, "mass")).isCloseTo(row.want("kg_per_m"), withinPercentage(0.3));
    }

    @Test
    void mass_ofBrassBlank_isVolumeTimesDensity() {
        PublishedRow row = PublishedRow.of("materials.json", "blank_mass").getFirst();
        Ask ask =
                Ask.of("weight", "shape", "round", "sizes", row.text("d") + " x " + row.text("L"), "material", "CZ121");

        assertThat(kilograms(ask, "mass")).isCloseTo(row.want("kg"), row.within("kg"));
    }

    @ParameterizedTest
    @EnumSource(Body.class)
    void volume_doubledSizes_isEightfold(Body body) {
        List<Length> sizes =
                List.of(Length.mm(40), Length.mm(30), Length.mm(70)).subList(0, body.count());
        List<Length> doubled = sizes.stream().map(size -> size.times(2)).toList();

        assertThat(body.volumeMm3(doubled)).isCloseTo(8 * body.volumeMm3(sizes), withinPercentage(1e-9));
    }

    @Test
    void volume_cone_liesBetweenItsEndsAndMeetsThem() {
        List<Length> cylinder = List.of(Length.mm(40), Length.mm(40), Length.mm(50));
        assertThat(Body.CONE.volumeMm3(cylinder))
                .isCloseTo(Body.ROUND.volumeMm3(List.of(Length.mm(40), Length.mm(50))), withinPercentage(1e-9));
    }

    @Test
    void weight_many_givesTheMassOfAll() {
        Ask ask = Ask.of("weight", "shape", "flat", "sizes", "100, 12, 150", "material", "EN3", "count", "40");

        assertThat(kilograms(ask, "massAll")).isCloseTo(40 * kilograms(ask, "mass"), withinPercentage(1e-9));
    }

    @Test
    void weight_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("weight", "shape", "tube", "sizes", "40 x 100", "material", "EN3")
                .isRefusedAt("sizes", "outside, inside");
        Ask.of("weight", "shape", "tube", "sizes", "30 x 40 x 100", "material", "EN3")
                .isRefusedAt("sizes", "smaller than");
        Ask.of("weight", "shape", "blob", "sizes", "30", "material", "EN3").isRefusedAt("shape", "round");
        Ask.of("weight", "shape", "sphere", "sizes", "x", "material", "EN3").isRefusedAt("sizes", "one after another");
    }
}
