package chargehand.drawing.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.Turning;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Look;
import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A feature under 3 mm on paper is shown again at the next scale that makes it 8 mm: drawing-office practice. */
final class SmallGroovesTest {
    private static final List<Double> SCALES = List.of(10.0, 5.0, 2.0, 1.0, 0.5);

    private static final Body.Turned BODY = Turning.mm("Pin")
            .round("head", "20", "30")
            .groove("first", "17", "2")
            .round("body", "20", "30")
            .groove("second", "17", "2")
            .round("tail", "20", "30")
            .groove("wide", "15", "4")
            .round("end", "20", "10")
            .body();

    private static List<SmallGrooves.Enlarged> at(double scale) {
        return SmallGrooves.of(BODY, Look.of(BODY, AxialScale.of(scale), Cut.NONE), SCALES);
    }

    @Test
    void of_groovesAlike_areShownOnceAtTheLeastScaleThatMakesThemWideEnough() {
        assertThat(at(1)).singleElement().satisfies(one -> {
            assertThat(one.letter()).isEqualTo("W");
            assertThat(one.sections()).containsExactly(1, 3);
            assertThat(one.detail().scale()).isEqualTo(5);
        });
    }

    @Test
    void of_groovesWideEnoughOnPaper_areNotShownAgain() {
        assertThat(at(2)).isEmpty();
    }

    @Test
    void of_aSmallerDrawing_showsEveryKindThatIsTooSmall() {
        assertThat(at(0.5)).extracting(SmallGrooves.Enlarged::letter).containsExactly("W", "X");
    }

    @Test
    void of_theLargerView_saysTheWidthHowOftenAndTheScale() {
        Dimensioned larger = DetailSizes.of(BODY, new SizeText(LengthUnit.MILLIMETRE), at(1).getFirst(), "5:1");

        assertThat(larger.placed()).extracting(Placing::says).containsExactly("2× 2", "W  5:1");
        assertThat(larger.placed().getFirst().tips())
                .extracting(tip -> Math.round(tip.x() * 1000) / 1000.0)
                .containsExactly(150.0, 160.0);
    }
}
