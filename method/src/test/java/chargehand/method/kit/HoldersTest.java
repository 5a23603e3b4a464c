package chargehand.method.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class HoldersTest {
    private static final ColletSet COLLETS = new ColletSet(
            "collets",
            new Limits(Length.inch(1, 8), Length.inch(3, 4)),
            Length.inch(1, 16),
            Length.thou(8),
            Length.in(1),
            Length.thou(0.5));

    private static Chuck chuck(int jaws, Chuck.Closing closing) {
        Limits grip = new Limits(Length.mm(5), Length.mm(100));
        return new Chuck(
                "chuck", jaws, closing, grip, Optional.empty(), Length.mm(25), Length.mm(0.05), Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        // work, collet that takes it (both in thou); none where the next is too far above
        "500, 500",
        "495, 500",
        "492, 500",
        "491.9, ",
        "501, ",
        "125, 125",
        "118, 125",
        "116, ",
        "750, 750",
        "751, ",
    })
    void colletFor_anyDiameter_theNextAboveIfItCloses(double work, Double collet) {
        Optional<Length> expected = Optional.ofNullable(collet).map(Length::thou);
        assertThat(COLLETS.colletFor(Length.thou(work))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "3, SELF_CENTRING, 6, true",
        "3, SELF_CENTRING, 4, false",
        "3, SELF_CENTRING, 8, false",
        "6, SELF_CENTRING, 6, true",
        "4, SELF_CENTRING, 4, true",
        "4, SELF_CENTRING, 6, false",
        "4, SELF_CENTRING, 8, true",
        "4, INDEPENDENT, 6, true",
        "4, INDEPENDENT, 4, true",
        "4, INDEPENDENT, 5, false",
    })
    void sitsEvenlyOn_regularBar_whereJawsMeetFlats(int jaws, Chuck.Closing closing, int sides, boolean evenly) {
        assertThat(chuck(jaws, closing).sitsEvenlyOn(sides)).isEqualTo(evenly);
    }

    @Test
    void grips_endsOfItsRange_included() {
        Chuck chuck = chuck(3, Chuck.Closing.SELF_CENTRING);
        assertThat(chuck.grips(Length.mm(5))).isTrue();
        assertThat(chuck.grips(Length.mm(100))).isTrue();
        assertThat(chuck.grips(Length.mm(100.001))).isFalse();
    }

    @Test
    void of_fiveJaws_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> chuck(5, Chuck.Closing.SELF_CENTRING))
                .withMessageContaining("3, 4 or 6");
    }
}
