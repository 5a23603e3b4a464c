package chargehand.trade.polygon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AcrossSumTest {
    private static final double FOURTH_DECIMAL = 6e-5;

    static List<PublishedRow> rounds() {
        return PublishedRow.of("sections.json", "from_round");
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void across_barOnly_givesTheLargestShape(PublishedRow row) {
        Ask square = Ask.of("across", "shape", "square", "bar", row.text("d"));
        Ask hexagon = Ask.of("across", "shape", "hexagon", "bar", row.text("d"));

        assertThat(square.mm("flats")).isCloseTo(row.want("max_square"), within(FOURTH_DECIMAL));
        assertThat(square.mm("depthOfCut")).isCloseTo(row.want("square_flat_depth"), within(FOURTH_DECIMAL));
        assertThat(hexagon.mm("largestFromBar")).isCloseTo(row.want("max_hex_AF"), within(FOURTH_DECIMAL));
        assertThat(hexagon.mm("depthOfCut")).isCloseTo(row.want("hex_flat_depth"), within(FOURTH_DECIMAL));
        assertThat(hexagon.mm("corners")).isCloseTo(row.number("d"), within(FOURTH_DECIMAL));
    }

    @Test
    void across_flatsOrCorners_meanTheSameShape() {
        Ask byFlats = Ask.of("across", "shape", "hex", "flats", "19");
        Ask byCorners = Ask.of("across", "shape", "6 flats", "corners", byFlats.mm("corners") + "");

        assertThat(byCorners.mm("flats")).isCloseTo(19, within(2e-6));
        assertThat(byFlats.mm("bar")).isCloseTo(21.9393, within(FOURTH_DECIMAL)); // AF/cos 30°, t08-003 (computed)
        assertThat(byFlats.degrees("turn")).isCloseTo(60, within(1e-9));
    }

    @Test
    void across_thinBar_leavesCornersRound() {
        Ask ask = Ask.of("across", "shape", "hexagon", "flats", "22", "bar", "25");

        assertThat(ask.mm("depthOfCut")).isEqualTo(1.5);
        assertThat(ask.mm("flatWidth")).isCloseTo(11.8743, within(FOURTH_DECIMAL));
        assertThat(ask.mm("largestFromBar")).isCloseTo(21.6506, within(FOURTH_DECIMAL));
        assertThat(ask.cautions()).anyMatch(say -> say.contains("stay round"));
    }

    @Test
    void across_oddSides_saysWhatACalliperReads() {
        Ask ask = Ask.of("across", "shape", "sides=5", "corners", "30");

        assertThat(ask.mm("flats")).isCloseTo(30 * Math.cos(Math.PI / 5), within(1e-6));
        assertThat(ask.mm("overFlatAndCorner")).isCloseTo(15 + 15 * Math.cos(Math.PI / 5), within(2e-6));
        assertThat(ask.cautions()).anyMatch(say -> say.contains("odd number of flats"));
    }

    @Test
    void across_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("across", "flats", "19").isRefusedAt("shape", "needed");
        Ask.of("across", "shape", "hexagon").isRefusedAt("flats", "across flats, across corners or of the bar");
        Ask.of("across", "shape", "blob", "flats", "19").isRefusedAt("shape", "not a shape with flats");
        Ask.of("across", "shape", "sides=2", "flats", "19").isRefusedAt("shape", "from 3 to 100 flats");
        Ask.of("across", "shape", "hexagon", "flats", "19", "bar", "18").isRefusedAt("bar", "larger than the 19 mm");
        Ask.of("across", "shape", "hexagon", "flats", "19", "corners", "25").isRefusedAt("corners", "do not go with");
        Ask.of("across", "shape", "hexagon", "flats", "-19").isRefusedAt("flats", "more than nothing");
    }
}
