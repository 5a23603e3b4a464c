package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Section;
import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Teeth and knurls: what follows from them, and what is refused. */
final class WheelFaultsTest {
    private static List<String> faults(String section) {
        return FaultsOf.of(PartText.mm().outside(section));
    }

    private static Section.Toothed wheel(String section) {
        var body =
                (Body.Turned) FaultsOf.sound(PartText.inches().outside(section)).body();
        return (Section.Toothed) body.outside().getFirst();
    }

    /** Outside diameter and whole depth: Brown & Sharpe and AGMA B6.1 gear formulas, from memory. */
    @ParameterizedTest
    @CsvSource({
        "10, 30, 14.5, 3.2, 0.2157",
        "10, 30, 20, 3.2, 0.225",
        "8, 40, 14.5, 5.25, 0.26963",
        "8, 40, 20, 5.25, 0.28125",
        "16, 24, 14.5, 1.625, 0.13481",
        "5, 50, 20, 10.4, 0.45"
    })
    void teeth_ofADiametralPitch_haveTheOutsideAndRootOfTheTables(
            String pitch, int teeth, String angle, double outside, double depth) {
        Section.Toothed wheel = wheel(
                "teeth: " + teeth + ", diametral-pitch: " + pitch + ", pressure-angle: " + angle + "°, length: 1");

        assertThat(wheel.outside().length().in()).isCloseTo(outside, within(1e-6));
        assertThat(wheel.outside().length().minus(wheel.root()).in() / 2).isCloseTo(depth, within(6e-6));
    }

    @Test
    void teeth_drawnOut_haveTheirRootMovedOutToo() {
        Section.Toothed full = wheel("teeth: 12, module: 3, pressure-angle: 20°, length: 1");
        Section.Toothed drawnOut = wheel("teeth: 12, module: 3, pressure-angle: 20°, outside: 44 mm, length: 1");

        assertThat(drawnOut.root().minus(full.root())).isEqualTo(Length.mm(2));
    }

    @Test
    void teeth_withoutTheirPressureAngle_areRefused() {
        assertThat(faults("teeth: 17, module: 3, length: 40")).containsExactly("outside[1] KEY_MISSING");
    }

    @Test
    void teeth_withoutSizeOrWithTwo_areRefused() {
        assertThat(faults("teeth: 17, pressure-angle: 20°, length: 40")).containsExactly("outside[1] KEY_MISSING");
        assertThat(faults("teeth: 17, module: 3, diametral-pitch: 8, pressure-angle: 20°, length: 40"))
                .containsExactly("outside[1].module KEYS_CLASH");
    }

    @Test
    void teeth_tooFew_areRefused() {
        assertThat(faults("teeth: 3, module: 3, pressure-angle: 20°, length: 40"))
                .containsExactly("outside[1].teeth TEETH_OUT_OF_RANGE");
    }

    @Test
    void pressureAngle_ofNoWheel_isRefused() {
        assertThat(faults("teeth: 17, module: 3, pressure-angle: 45°, length: 40"))
                .containsExactly("outside[1].pressure-angle PRESSURE_ANGLE_OUT_OF_RANGE");
    }

    @Test
    void outside_thatDoesNotGoWithTheTeeth_isRefused() {
        assertThat(faults("teeth: 17, module: 3, pressure-angle: 20°, outside: 70, length: 40"))
                .containsExactly("outside[1].outside TEETH_OUTSIDE");
        assertThat(faults("teeth: 17, module: 3, pressure-angle: 20°, outside: 51, length: 40"))
                .containsExactly("outside[1].outside TEETH_OUTSIDE");
    }

    /** DIN 82 and ISO 13444, from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"0.5", "0.6", "0.8", "1", "1.2", "1.6"})
    void knurl_ofAStandardPitch_stands(String pitch) {
        assertThat(faults("knurl: 25, pattern: diamond, pitch: " + pitch + ", length: 20"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.7", "1.5", "2"})
    void knurl_ofAnotherPitch_isRefused(String pitch) {
        assertThat(faults("knurl: 25, pattern: straight, pitch: " + pitch + ", length: 20"))
                .containsExactly("outside[1].pitch KNURL_PITCH");
    }

    @Test
    void knurl_ofAnUnknownPattern_isRefused() {
        assertThat(faults("knurl: 25, pattern: wavy, pitch: 0.8, length: 20"))
                .containsExactly("outside[1].pattern UNREADABLE");
    }

    @Test
    void knurl_tooCoarseForItsDiameter_isRefused() {
        assertThat(faults("knurl: 6, pattern: diamond, pitch: 1.6, length: 20"))
                .containsExactly("outside[1].pitch KNURL_PITCH");
    }
}
