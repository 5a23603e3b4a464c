package chargehand.trade.sine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SineSumTest {
    static List<PublishedRow> rows() {
        return PublishedRow.of("tapers.json", "sine_bar");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void stack_ofAngle_isAsComputed(PublishedRow row) {
        Ask ask = Ask.of("sine", "angle", row.text("angle_deg"), "bar", row.text("centres"));

        assertThat(ask.mm("stack")).isCloseTo(row.want("height"), row.within("height"));
    }

    @Test
    void perStep_ofHeight_growsAsComputed() {
        PublishedRow row = PublishedRow.of("tapers.json", "sine_bar_error").getFirst();
        Ask ask = Ask.of("sine", "angle", row.text("angle_deg"), "bar", row.text("centres_mm"));

        assertThat(ask.degrees("perStep") * 60 * row.number("height_error_mm") / 0.001)
                .isCloseTo(row.want("angle_error_arcmin"), row.within("angle_error_arcmin"));
    }

    @Test
    void gauges_ofAnyStack_addUpToItWithinHalfAStep() {
        var random = new Random(87);
        for (GaugeSet set : List.of(GaugeSet.METRIC, GaugeSet.INCH)) {
            for (int i = 0; i < 300; i++) {
                Length height = set.finest().times(3000 + random.nextInt(40_000));
                List<Length> blocks = set.stack(height).orElseThrow();

                assertThat(blocks.stream().reduce(Length.ZERO, Length::plus)).isEqualTo(height);
                assertThat(new HashSet<>(blocks)).as("each block is there once").hasSameSizeAs(blocks);
                assertThat(blocks.size()).isLessThanOrEqualTo(7);
            }
        }
    }

    @Test
    void gauges_ofWorkedStack_areTheFewest() {
        // 46.175 mm, as for 27° 30' on 100 mm: 1.005 + 1.17 + 4 + 40 (gauge-block practice, worked by hand).
        Ask ask = Ask.of("sine", "angle", "27.5", "bar", "100");

        assertThat(ask.many("gauges")).hasSize(4);
        assertThat(ask.degrees("angleError")).isCloseTo(0, within(ask.degrees("perStep") / 2 + 1e-9));
    }

    @Test
    void sine_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("sine", "angle", "90", "bar", "100").isRefusedAt("angle", "between 0° and 90°");
        Ask.of("sine", "angle", "30").isRefusedAt("bar", "needed");
        Ask.of("sine", "angle", "30", "bar", "0.5 mm").isRefusedAt("bar", "1 mm");
    }
}
