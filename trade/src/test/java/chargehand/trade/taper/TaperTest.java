package chargehand.trade.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What tapers obey whatever their steepness, and how the standard ones are named. */
class TaperTest {
    private static final int CASES = 500;
    private static final double NEAR = 1e-9;
    private static final Length NANOMETRES = new Length(40);

    private final Random random = new Random(48);

    private Taper anyTaper() {
        return Taper.oneIn(0.5 + random.nextDouble() * 100);
    }

    @Test
    void everyWayOfNamingIt_comesBackToTheSameTaper() {
        for (int i = 0; i < CASES; i++) {
            Taper taper = anyTaper();
            assertThat(Taper.oneIn(taper.oneIn()).rate()).isCloseTo(taper.rate(), within(NEAR));
            assertThat(Taper.included(taper.included()).rate()).isCloseTo(taper.rate(), within(NEAR));
            assertThat(Taper.perFoot(taper.perFoot()).rate()).isCloseTo(taper.rate(), within(1e-8));
            assertThat(taper.included().degrees())
                    .isCloseTo(2 * taper.halfAngle().degrees(), within(NEAR));
        }
    }

    @Test
    void cone_anyTwoSizes_giveTheThirdBack() {
        for (int i = 0; i < CASES; i++) {
            Length small = Length.mm(1 + random.nextInt(100));
            Length large = small.plus(Length.mm(0.5 + random.nextInt(40)));
            Length length = Length.mm(5 + random.nextInt(300));
            Cone whole = Cone.between(large, small, length);

            Cone noLarge = Cone.of(whole.taper(), Optional.empty(), whole.small(), whole.length());
            Cone noSmall = Cone.of(whole.taper(), whole.large(), Optional.empty(), whole.length());
            Cone noLength = Cone.of(whole.taper(), whole.large(), whole.small(), Optional.empty());

            assertThat(noLarge.large().orElseThrow().isWithin(NANOMETRES, large))
                    .isTrue();
            assertThat(noSmall.small().orElseThrow().isWithin(NANOMETRES, small))
                    .isTrue();
            assertThat(noLength.length().orElseThrow().isWithin(NANOMETRES, length))
                    .isTrue();
        }
    }

    @Test
    void cone_oneSizeOnly_leavesTheRestUnknown() {
        Cone cone = Cone.of(Taper.oneIn(20), Optional.of(Length.mm(30)), Optional.empty(), Optional.empty());

        assertThat(cone.small()).isEmpty();
        assertThat(cone.length()).isEmpty();
    }

    @Test
    void setOver_doublesWithTheWholeLength_andIgnoresTheTaperedPart() {
        Taper taper = Taper.between(Length.mm(32), Length.mm(28), Length.mm(120));

        assertThat(taper.setOver(Length.mm(500)).mm())
                .isCloseTo(2 * taper.setOver(Length.mm(250)).mm(), within(2e-6));
    }

    @Test
    void setOver_rule_neverFallsShortOfTheExactOne() {
        for (int i = 0; i < CASES; i++) {
            Taper taper = anyTaper();
            Length whole = Length.mm(300);
            assertThat(taper.setOver(whole)).isGreaterThanOrEqualTo(taper.setOverAlongWork(whole));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "MT 3, Morse 3",
        "MT3, Morse 3",
        "No. 3 Morse, Morse 3",
        "3MT, Morse 3",
        "2 Morse taper, Morse 2",
        "morse taper no 2, Morse 2",
        "B&S 7, Brown & Sharpe 7",
        "Brown and Sharpe 10, Brown & Sharpe 10",
        "jarno 7, Jarno 7",
        "JT6, Jacobs 6",
        "Jacobs 33, Jacobs 33",
        "metric 80, Metric 80",
        "7/24 40, Milling 40",
        "ISO 40, Milling 40",
        "Morse #2, Morse 2",
    })
    void standard_asPeopleWriteIt_isFound(String written, String name) {
        assertThat(StandardTapers.get(written).name()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "MT", "MT 9", "3", "Jarno 1", "Morse 3 and 4", "1 in 20", "MT 99999999999"})
    void standard_noSuchTaper_isRefusedInPlainWords(String written) {
        assertThatThrownBy(() -> StandardTapers.get(written))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("is not a machine taper in the table");
    }

    @Test
    void list_everyStandardTaper_agreesWithItsOwnEnds() {
        for (StandardTaper standard : StandardTapers.list()) {
            if (standard.length().isPresent()) {
                Length change = standard.large().minus(standard.small().orElseThrow());
                Length byRate = standard.taper().changeOver(standard.length().get());
                assertThat(change.isWithin(Length.in(0.0001), byRate))
                        .as(standard.name())
                        .isTrue();
            }
        }
    }

    @Test
    void taper_parallelOrTurnedRound_isRefused() {
        assertThatThrownBy(() -> Taper.between(Length.mm(20), Length.mm(20), Length.mm(50)))
                .hasMessageContaining("a taper must lie between");
        assertThatThrownBy(() -> Taper.between(Length.mm(20), Length.mm(30), Length.mm(50)))
                .hasMessageContaining("a taper must lie between");
        assertThatThrownBy(() -> Taper.included(Angle.degrees(180))).hasMessageContaining("between 0 and 180");
    }
}
