package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Tolerance;
import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outside cones: two diameters, or the larger one and how it slopes. */
final class ConeFormTest {
    private static Part part(String cone) {
        return FaultsOf.sound(PartText.mm().outside("cone: {" + cone + "}, length: 60"));
    }

    private static Section.Cone cone(String cone) {
        return (Section.Cone) ((Body.Turned) part(cone).body()).outside().getFirst();
    }

    private static List<String> faults(String cone) {
        return FaultsOf.of(PartText.mm().outside("cone: {" + cone + "}, length: 60"));
    }

    @Test
    void taper_withTheDiameterTowardsA_narrowsTowardsB() {
        Section.Cone cone = cone("from: 30 h9, taper: 1 in 12");

        assertThat(cone.diameterTowardsB().mm()).isCloseTo(25, within(1e-6));
        assertThat(cone.towardsB().tolerance()).isEqualTo(new Tolerance.Bracketed());
        assertThat(cone.taper()).isEqualTo("1 in 12");
    }

    @Test
    void taper_withTheDiameterTowardsB_narrowsTowardsA() {
        assertThat(cone("to: 30, taper: 1:12").diameterTowardsA().mm()).isCloseTo(25, within(1e-6));
    }

    @Test
    void angle_isTheIncludedOne() {
        assertThat(cone("from: 90, angle: 60").diameterTowardsB().mm())
                .isCloseTo(90 - 2 * 60 * Math.tan(Math.toRadians(30)), within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "from: 30, to: 25 ±0.05",
                "from: 30 h9, taper: 1 in 12",
                "to: 1 3/8, taper: 1:20",
                "from: 30, angle: 5° 30'",
                "to: 80, angle: 60"
            })
    void write_anyCone_readsBackTheSame(String cone) {
        Part part = part(cone);

        assertThat(PartFile.read(PartFile.write(part)))
                .isInstanceOfSatisfying(
                        PartReading.Read.class, read -> assertThat(read.part()).isEqualTo(part));
    }

    @Test
    void slopeTwice_isRefused() {
        assertThat(faults("from: 30, taper: 1 in 12, angle: 5°")).containsExactly("outside[1].cone.angle KEYS_CLASH");
    }

    @Test
    void slopeAndBothDiameters_areRefused() {
        assertThat(faults("from: 30, to: 25, taper: 1 in 12")).containsExactly("outside[1].cone KEYS_CLASH");
    }

    @Test
    void slopeWithoutADiameter_isRefused() {
        assertThat(faults("taper: 1 in 12")).containsExactly("outside[1].cone KEY_MISSING");
    }

    @Test
    void oneDiameterAlone_isRefused() {
        assertThat(faults("from: 30")).containsExactly("outside[1].cone KEY_MISSING");
    }

    @Test
    void largerDiameterInBrackets_isRefused() {
        assertThat(faults("from: (30), taper: 1 in 12")).containsExactly("outside[1].cone.from UNREADABLE");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "steep", "-1 in 12", "20 in 1", "1 in 0"})
    void slopeThatIsNone_isRefused(String taper) {
        assertThat(faults("from: 30, taper: " + taper)).containsExactly("outside[1].cone.taper UNREADABLE");
    }
}
