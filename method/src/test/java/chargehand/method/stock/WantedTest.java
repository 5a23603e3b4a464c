package chargehand.method.stock;

import static chargehand.method.stock.Wants.bar;
import static chargehand.method.stock.Wants.round;
import static chargehand.method.stock.Wants.turned;
import static chargehand.method.stock.Wants.with;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Sureness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WantedTest {
    private static Answer answer(String asked, String duty, Piece piece) {
        return Wanted.of(turned(asked, duty, round("20", "20"))).answeredBy(piece);
    }

    private static Piece piece(String material) {
        return bar("X1", material, round("25"), "500");
    }

    private static String why(Answer answer) {
        assertThat(answer).isInstanceOf(Answer.WillNotDo.class);
        return ((Answer.WillNotDo) answer).why();
    }

    private static Answer.WillDo willDo(Answer answer) {
        assertThat(answer).isInstanceOf(Answer.WillDo.class);
        return (Answer.WillDo) answer;
    }

    @ParameterizedTest
    @CsvSource({"gunmetal LG2, LG2", "EN8, 080M40", "phosphor bronze, PB1", "LG2, LG2 continuously cast"})
    void answeredBy_sameMaterialOtherWords_same(String asked, String onTheRack) {
        assertThat(willDo(answer(asked, "", piece(onTheRack))).match()).isEqualTo(Candidate.Match.SAME);
    }

    @Test
    void answeredBy_strongerSteel_equivalentWithCaution() {
        Answer.WillDo answer = willDo(answer("EN3B", "", piece("EN8")));
        assertThat(answer.match()).isEqualTo(Candidate.Match.EQUIVALENT);
        assertThat(answer.cautions()).anyMatch(caution -> caution.startsWith("EN8 instead of EN3B"));
    }

    @Test
    void answeredBy_strongerSteelUnderPressure_notTaken() {
        assertThat(why(answer("EN3B", "hydraulic, 200 bar", piece("EN8")))).contains("EN3B is asked for");
    }

    @Test
    void answeredBy_weakerSteel_notTaken() {
        assertThat(why(answer("EN8", "", piece("EN3B")))).contains("it is EN3B");
    }

    @ParameterizedTest
    @CsvSource({"'steam, 250 psi'", "boiler feed", "'10 bar'", "lifting lug", "tow post"})
    void answeredBy_unknownBrass_notForAnyDuty(String duty) {
        Piece unknown = with(piece("brass, unknown"), Sureness.UNKNOWN);
        assertThat(why(answer("brass", duty, unknown))).contains("nobody knows its material");
    }

    @Test
    void answeredBy_unknownBrassWithoutDuty_takenWithCaution() {
        Answer.WillDo answer = willDo(answer("brass", "", with(piece("brass, unknown"), Sureness.UNKNOWN)));
        assertThat(answer.match()).isEqualTo(Candidate.Match.EQUIVALENT);
        assertThat(answer.cautions()).anyMatch(caution -> caution.contains("of some sort"));
    }

    @Test
    void answeredBy_unknownBrassForGunmetal_notTaken() {
        assertThat(why(answer("LG2", "", with(piece("brass, unknown"), Sureness.UNKNOWN))))
                .contains("LG2 is asked for");
    }

    @Test
    void answeredBy_takenForUnderSteam_notTaken() {
        assertThat(why(answer("LG2", "steam", with(piece("LG2"), Sureness.TAKEN_FOR))))
                .contains("only taken to be LG2");
        assertThat(willDo(answer("LG2", "", with(piece("LG2"), Sureness.TAKEN_FOR)))
                        .cautions())
                .hasSize(1);
    }

    @Test
    void answeredBy_markedUnderSteam_competentPersonSays() {
        assertThat(willDo(answer("LG2", "steam", with(piece("LG2"), Sureness.MARKED)))
                        .cautions())
                .anyMatch(caution -> caution.contains("competent person"));
        assertThat(willDo(answer("LG2", "steam", piece("LG2"))).cautions()).isEmpty();
    }

    @Test
    void answeredBy_brassForSteam_notTakenEvenWhenAsked() {
        assertThat(why(answer("CZ121", "steam", piece("CZ121")))).contains("not used for steam");
    }

    @Test
    void answeredBy_materialInNoTable_byItsWords() {
        assertThat(willDo(answer("Harbour Alloy 9", "", piece("harbour alloy 9")))
                        .match())
                .isEqualTo(Candidate.Match.SAME);
        assertThat(why(answer("Harbour Alloy 9", "", piece("EN8")))).contains("Harbour Alloy 9 is asked for");
    }

    @ParameterizedTest
    @CsvSource({
        "'steam, 250 psi', STEAM",
        "boiler feed water, STEAM",
        "lifts 2 tons, LIFTING",
        "slipway winch, LIFTING",
        "hydraulic, PRESSURE",
        "'works at 10 bar', PRESSURE",
        "tow bar, ORDINARY",
        "'', NONE",
    })
    void of_words_duty(String words, Duty duty) {
        assertThat(Duty.of(words)).isEqualTo(duty);
    }
}
