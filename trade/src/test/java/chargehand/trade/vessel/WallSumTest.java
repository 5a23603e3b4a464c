package chargehand.trade.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WallSumTest {
    static List<PublishedRow> thick() {
        return PublishedRow.of("strength.json", "lame_internal");
    }

    static List<PublishedRow> thin() {
        return PublishedRow.of("strength.json", "thin_hoop");
    }

    static List<PublishedRow> tests() {
        return PublishedRow.of("relief-valve.json", "hydro_test");
    }

    @ParameterizedTest
    @MethodSource("thick")
    void hoopStress_ofThickWall_isThatOfLame(PublishedRow row) {
        var cylinder = new Cylinder(Length.mm(2 * row.number("ri")), Length.mm(2 * row.number("ro")));

        assertThat(cylinder.hoopStress(Pressure.megapascals(row.number("p"))).megapascals())
                .isCloseTo(row.want("hoop_bore"), row.within("hoop_bore"));
        assertThat(cylinder.atOutside() * row.number("p"))
                .isCloseTo(row.want("hoop_outside"), row.within("hoop_outside"));
    }

    @ParameterizedTest
    @MethodSource("thin")
    void hoopStress_ofThinWall_isPdOverTwoT(PublishedRow row) {
        Ask ask = Ask.of(
                "wall",
                "inside",
                row.text("d"),
                "outside",
                Double.toString(row.number("d") + 2 * row.number("t")),
                "pressure",
                row.text("p") + " MPa",
                "material",
                "mild steel");

        assertThat(ask.megapascals("hoopStress")).isCloseTo(row.want("hoop"), row.within("hoop"));
        assertThat(ask.number("factor")).isCloseTo(215 / row.want("hoop"), withinPercentage(0.01));
    }

    @ParameterizedTest
    @MethodSource("tests")
    void testPressure_isSoManyTimesTheWorkingOne(PublishedRow row) {
        Ask ask = Ask.of(
                "wall",
                "inside",
                "20",
                "outside",
                "40",
                "pressure",
                row.text("working_bar") + " bar",
                "material",
                "LG2",
                "test",
                row.text("multiplier"));

        assertThat(((Figure.OfPressure) ask.figure("testPressure")).pressure().bar())
                .isCloseTo(row.want("test_bar"), row.within("test_bar"));
    }

    @Test
    void thinnest_underAThread_isLessThanThePlainWall() {
        // G 1 is 33.249 mm over and 30.291 mm at the root (ISO 228-1): (30.291 − 20) / 2.
        Ask outside = Ask.of(
                "wall", "inside", "20", "outside", "33.25", "pressure", "10 bar", "material", "LG2", "thread", "G 1");
        // M30×2 cut inside a tube of 27.835 mm: its groove goes to 30 mm.
        Ask inside = Ask.of(
                "wall", "inside", "27.8", "outside", "45", "pressure", "10 bar", "material", "LG2", "thread", "M30x2");

        assertThat(outside.mm("thinnest")).isCloseTo((30.291 - 20) / 2, within(0.001));
        assertThat(inside.mm("thinnest")).isCloseTo(7.5, within(0.001));
    }

    @Test
    void hoopStress_thickerWall_falls() {
        double before = Double.MAX_VALUE;
        for (int outside = 42; outside <= 120; outside += 2) {
            double stress = new Cylinder(Length.mm(40), Length.mm(outside))
                    .hoopStress(Pressure.megapascals(1))
                    .megapascals();
            assertThat(stress).isLessThan(before);
            before = stress;
        }
    }

    @Test
    void wall_always_saysWhoDecides() {
        Ask ask = Ask.of("wall", "inside", "20", "outside", "40", "pressure", "10 bar", "material", "CZ121");

        assertThat(ask.text("caution")).contains("competent person").contains("never with air");
        assertThat(ask.cautions()).anyMatch(say -> say.contains("not used for steam"));
    }

    @Test
    void wall_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("wall", "inside", "40", "outside", "40", "pressure", "10 bar", "material", "LG2")
                .isRefusedAt("inside", "smaller than the outside");
        Ask.of("wall", "inside", "20", "outside", "40", "pressure", "10", "material", "LG2")
                .isRefusedAt("pressure", "bar");
        Ask.of("wall", "inside", "29", "outside", "34", "pressure", "1 bar", "material", "LG2", "thread", "M30x6")
                .isRefusedAt("thread", "");
    }
}
