package chargehand.trade.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.PublishedRow;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a drawing says of a wheel's teeth against the rows that the sums are held to, each with its source. */
final class WheelSizesTest {
    @TestFactory
    Stream<DynamicTest> of_aWheelInARow_spansItAsTheRowDoes() {
        return PublishedRow.of("gears.json", "span").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    double module = row.number("module");
                    int teeth = (int) row.number("teeth");
                    double outside = module * (teeth + 2 + 2 * row.number("x"));
                    WheelSizes sizes =
                            WheelSizes.of(teeth, module, Angle.degrees(row.number("alpha")), Length.mm(outside));
                    WheelSizes.Span span = sizes.span().orElseThrow();

                    assertThat(sizes.shift()).isCloseTo(row.number("x"), within(1e-5));
                    assertThat(span.over()).isEqualTo((int) row.number("k"));
                    assertThat(span.size().mm()).isCloseTo(row.want("W_mm"), row.within("W_mm"));
                }));
    }

    /** 20 teeth of module 1: 22.39 over pins of 1.728 (computed row of the same table), cutter number 6 for 17 to 20 teeth. */
    @Test
    void of_aPlainWheel_saysPinsDepthAndCutter() {
        WheelSizes sizes = WheelSizes.of(20, 1, Angle.degrees(20), Length.mm(22));

        assertThat(sizes.pins().orElseThrow().size().mm()).isCloseTo(22.39, within(6e-5));
        assertThat(sizes.toothDepth().mm()).isCloseTo(2.25, within(1e-9));
        assertThat(sizes.thickness().mm()).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(sizes.cutter()).contains(6);
    }

    @Test
    void of_tipsTurnedOff_takesNoShift() {
        assertThat(WheelSizes.of(20, 1, Angle.degrees(20), Length.mm(21.5)).shift())
                .isZero();
    }

    @Test
    void of_fewerThanTwelveTeeth_namesNoCutter() {
        assertThat(WheelSizes.of(10, 2, Angle.degrees(20), Length.mm(24)).cutter())
                .isEmpty();
    }
}
