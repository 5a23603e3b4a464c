package chargehand.trade.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PackingSumTest {
    static List<PublishedRow> rows() {
        return PublishedRow.of("sections.json", "three_jaw_packing");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void packing_ofEccentric_isAsComputed(PublishedRow row) {
        Ask ask = Ask.of("packing", "throw", row.text("offset"), "diameter", row.text("work_d"));

        assertThat(ask.mm("packing")).isCloseTo(row.want("packing"), within(6e-5));
        assertThat(ask.mm("approximate")).isEqualTo(row.want("rule_1p5e"));
        assertThat(ask.mm("error")).isCloseTo(ask.mm("approximate") - ask.mm("packing"), within(1e-6));
    }

    /** Jaws at points 120° apart, all at one distance from the spindle: a circle through the three touches the work. */
    @Test
    void packing_putBackIntoTheChuck_throwsTheWorkOutByTheEccentricity() {
        double radius = 25;
        double thrown = 5;
        double packing =
                ThreeJawPacking.exact(Length.mm(thrown), Length.mm(2 * radius)).mm();
        // Two jaws at ±60° from the axis away from the packed one touch the work, whose middle lies `thrown` towards
        // them.
        double jaw = thrown * Math.cos(Math.PI / 3)
                + Math.sqrt(radius * radius - Math.pow(thrown * Math.sin(Math.PI / 3), 2));
        // The packed jaw stands opposite; work and packing reach it together.
        assertThat(radius - thrown + packing).isCloseTo(jaw, within(2e-6));
    }

    @Test
    void packing_thrownTooFar_isRefused() {
        Ask.of("packing", "throw", "30", "diameter", "50").isRefusedAt("throw", "four-jaw");
        Ask.of("packing", "throw", "5", "diameter", "50", "jaws", "4").isRefusedAt("jaws", "3");
    }
}
