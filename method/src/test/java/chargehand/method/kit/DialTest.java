package chargehand.method.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import chargehand.measure.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DialTest {
    private static final Dial DIAL = new Dial(Length.mm(0.05), Length.mm(5));

    @ParameterizedTest
    @CsvSource({"1.00, 1.00, 1.00", "1.02, 1.00, 1.00", "1.03, 1.05, 1.00", "1.049, 1.05, 1.00", "0, 0, 0"})
    void nearestAndNotAbove_anyReading_onADivision(double reading, double nearest, double notAbove) {
        assertThat(DIAL.nearest(Length.mm(reading))).isEqualTo(Length.mm(nearest));
        assertThat(DIAL.notAbove(Length.mm(reading))).isEqualTo(Length.mm(notAbove));
    }

    @Test
    void of_turnLessThanADivision_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Dial(Length.mm(1), Length.mm(0.5)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Dial(Length.ZERO, Length.mm(0.5)));
    }

    @Test
    void crossReading_radiusDial_halfOfWhatComesOff() {
        Slides radius = slides(Slides.CrossReads.RADIUS);
        assertThat(radius.crossReading(Length.mm(2))).isEqualTo(Length.mm(1));
        assertThat(radius.offDiameter(Length.mm(1))).isEqualTo(Length.mm(2));
    }

    @Test
    void crossReading_diameterDial_whatComesOff() {
        Slides diameter = slides(Slides.CrossReads.DIAMETER);
        assertThat(diameter.crossReading(Length.mm(2))).isEqualTo(Length.mm(2));
        assertThat(diameter.offDiameter(Length.mm(2))).isEqualTo(Length.mm(2));
    }

    private static Slides slides(Slides.CrossReads reads) {
        return new Slides(DIAL, reads, Optional.empty(), Optional.empty(), Length.mm(80));
    }
}
