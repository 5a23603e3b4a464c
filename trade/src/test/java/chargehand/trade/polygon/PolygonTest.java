package chargehand.trade.polygon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PolygonTest {
    private static final String ROWS = "sections.json";
    private static final double FOURTH_DECIMAL = 6e-5;

    static List<PublishedRow> hexagons() {
        return PublishedRow.of(ROWS, "hex_corners");
    }

    static List<PublishedRow> rounds() {
        return PublishedRow.of(ROWS, "from_round");
    }

    @ParameterizedTest
    @MethodSource("hexagons")
    void corners_ofHexagon_areAsComputed(PublishedRow row) {
        assertThat(Polygon.HEXAGON
                        .corners(Length.mm(row.number("across_flats")))
                        .mm())
                .isCloseTo(row.want("across_corners"), within(FOURTH_DECIMAL));
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void flats_largestFromRound_areAsComputed(PublishedRow row) {
        Length round = Length.mm(row.number("d"));
        Length square = Polygon.SQUARE.flats(round);
        Length hexagon = Polygon.HEXAGON.flats(round);

        assertThat(square.mm()).isCloseTo(row.want("max_square"), within(FOURTH_DECIMAL));
        assertThat(hexagon.mm()).isCloseTo(row.want("max_hex_AF"), within(FOURTH_DECIMAL));
        assertThat(Polygon.OCTAGON.flats(round).mm()).isCloseTo(row.want("max_octagon_AF"), within(FOURTH_DECIMAL));
        assertThat(Polygon.SQUARE.depthOfCut(round, square).mm())
                .isCloseTo(row.want("square_flat_depth"), within(FOURTH_DECIMAL));
        assertThat(Polygon.HEXAGON.depthOfCut(round, hexagon).mm())
                .isCloseTo(row.want("hex_flat_depth"), within(FOURTH_DECIMAL));
    }

    @Test
    void flatWidth_barThinnerThanCorners_isTheChord() {
        PublishedRow row = PublishedRow.of(ROWS, "flat_width").getFirst();
        Length round = Length.mm(row.number("d"));
        Length flats = Length.mm(row.number("across"));

        assertThat(Polygon.HEXAGON.flatWidth(round, flats).mm())
                .isCloseTo(row.want("flat_width"), within(FOURTH_DECIMAL));
        assertThat(Polygon.HEXAGON.depthOfCut(round, flats).mm()).isEqualTo(row.want("depth_from_surface"));
    }

    @Test
    void corners_everyShape_areUndoneByFlats() {
        for (int sides = Polygon.FEWEST; sides <= Polygon.MOST; sides++) {
            var shape = new Polygon(sides);
            Length flats = Length.mm(22.4);
            Length corners = shape.corners(flats);

            assertThat(shape.flats(corners).isWithin(new Length(1), flats)).isTrue();
            assertThat(corners).isGreaterThan(flats);
            assertThat(shape.turn().degrees() * sides).isCloseTo(360, within(1e-9));
            // The corner lies at half a flat along from its middle: Pythagoras, not the cosine.
            double halfFlat = shape.flatWidth(corners, flats).mm() / 2;
            assertThat(2 * Math.hypot(flats.mm() / 2, halfFlat)).isCloseTo(corners.mm(), within(1e-5));
        }
    }

    @Test
    void corners_moreFlats_comeNearerToTheRound() {
        Length flats = Length.mm(30);
        for (int sides = Polygon.FEWEST; sides < Polygon.MOST; sides++) {
            assertThat(new Polygon(sides + 1).corners(flats)).isLessThan(new Polygon(sides).corners(flats));
        }
    }

    @Test
    void overFlatAndCorner_triangle_isItsHeight() {
        // An equilateral triangle of side s is s·√3/2 high and s/√3 across "flats".
        double side = 40;
        assertThat(new Polygon(3)
                        .overFlatAndCorner(Length.mm(side / Math.sqrt(3)))
                        .mm())
                .isCloseTo(side * Math.sqrt(3) / 2, within(1e-5));
    }

    @Test
    void polygon_tooFewSides_isRefused() {
        assertThatThrownBy(() -> new Polygon(2)).hasMessageContaining("3 to 100 flats");
    }
}
