package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Angle;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.part.Edge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edges as a turner says them. */
final class EdgeTextTest {
    @Test
    void read_chamferAlone_isAtFortyFiveDegrees() {
        assertThat(EdgeText.read("chamfer 1/16", LengthUnit.INCH))
                .isEqualTo(new Edge.Chamfer(LengthReader.read("1/16", LengthUnit.INCH), Angle.degrees(45)));
    }

    @Test
    void read_chamferWithAngle_takesIt() {
        assertThat(EdgeText.read("Chamfer 1 × 30°", LengthUnit.MILLIMETRE))
                .isEqualTo(new Edge.Chamfer(LengthReader.read("1", LengthUnit.MILLIMETRE), Angle.degrees(30)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"plain", "radius 3", "chamfer 1.5", "chamfer 1/16 in", "chamfer 1 x 30°", "chamfer 1 x 7.5°"})
    void write_whatWasRead_isTheSameText(String text) {
        assertThat(EdgeText.write(EdgeText.read(text, LengthUnit.MILLIMETRE))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "chamfer", "chamfer x 30°", "radius", "radius 3 x 4", "plain 3", "bevel 2"})
    void read_whatIsNoEdge_isRefusedInASentence(String text) {
        assertThatThrownBy(() -> EdgeText.read(text, LengthUnit.MILLIMETRE))
                .isInstanceOfSatisfying(
                        Unreadable.class, refusal -> assertThat(refusal.say()).endsWith("."));
    }
}
