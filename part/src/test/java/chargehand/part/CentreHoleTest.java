package chargehand.part;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CentreHoleTest {
    /** ISO 6411 and DIN 332-1, from memory. */
    @ParameterizedTest
    @CsvSource({
        "A 1.6/3.35",
        "A 2.5/5.3",
        "A 4/8.5",
        "A 10/21.2",
        "B 1.6/5",
        "B 2.5/8",
        "B 4/12.5",
        "B 10/28",
        "R 3.15/6.7",
        "R 6.3/13.2"
    })
    void list_hasTheHolesOfTheStandard(String designation) {
        assertThat(CentreHole.list()).extracting(CentreHole::designation).contains(designation);
    }

    @Test
    void list_ofEachForm_growsInDrillAndMouthTogether() {
        for (CentreHole.Form form : CentreHole.Form.values()) {
            var holes = CentreHole.list().stream()
                    .filter(hole -> hole.form() == form)
                    .toList();
            assertThat(holes)
                    .hasSize(8)
                    .isSortedAccordingTo((one, other) -> one.pilot().compareTo(other.pilot()));
            assertThat(holes.stream().map(CentreHole::mouth)).isSorted();
        }
    }

    /** The second cone of form B stands outside the first, which is that of form A. */
    @Test
    void mouth_ofFormB_isWiderThanThatOfFormA() {
        for (CentreHole hole : CentreHole.list()) {
            if (hole.form() == CentreHole.Form.B) {
                Length plain = CentreHole.list().stream()
                        .filter(other -> other.form() == CentreHole.Form.A
                                && other.pilot().equals(hole.pilot()))
                        .findFirst()
                        .orElseThrow()
                        .mouth();
                assertThat(hole.mouth()).isGreaterThan(plain);
            }
        }
    }
}
