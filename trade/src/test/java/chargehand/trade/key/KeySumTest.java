package chargehand.trade.key;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class KeySumTest {
    static List<PublishedRow> rows() {
        return PublishedRow.of("strength.json", "key_stress");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void stresses_ofKey_areAsComputed(PublishedRow row) {
        var key = new KeySize(Length.mm(row.number("b")), Length.mm(row.number("h")), Length.ZERO, Length.ZERO);
        KeyLoad load = KeyLoad.of(Torque.newtonMetres(row.number("T_Nm")), Length.mm(row.number("d")), key);
        Length length = Length.mm(row.number("L"));

        assertThat(load.force().newtons()).isCloseTo(row.want("F_N"), row.within("F_N"));
        assertThat(load.shear(length).megapascals()).isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
        assertThat(load.crushing(length).megapascals()).isCloseTo(row.want("crush_MPa"), row.within("crush_MPa"));
    }

    /** The same shafts carry the same keys in the metric standard: 6×6 on 20, 8×7 on 30, 14×9 on 50 mm. */
    @ParameterizedTest
    @MethodSource("rows")
    void key_ofShaft_isTheStandardOne(PublishedRow row) {
        Ask ask = Ask.of("key", "shaft", row.text("d"), "torque", row.text("T_Nm") + " Nm", "hubLength", row.text("L"));

        assertThat(ask.mm("width")).isEqualTo(row.number("b"));
        assertThat(ask.mm("height")).isEqualTo(row.number("h"));
        assertThat(ask.megapascals("shear")).isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
    }

    @Test
    void lengthNeeded_asLength_bringsTheWorseStressToWhatIsAllowed() {
        var key = KeySize.find(KeySize.Standard.METRIC, Length.mm(40)).orElseThrow();
        KeyLoad load = KeyLoad.of(Torque.newtonMetres(500), Length.mm(40), key);
        var shear = Pressure.megapascals(70);
        var crushing = Pressure.megapascals(140);
        Length needed = load.lengthNeeded(shear, crushing);

        double used = Math.max(
                load.shear(needed).megapascals() / 70, load.crushing(needed).megapascals() / 140);
        assertThat(used).isCloseTo(1, within(1e-6));
    }

    @ParameterizedTest
    @EnumSource(KeySize.Standard.class)
    void table_everyShaft_hasAKeyThatFitsItsKeyways(KeySize.Standard standard) {
        Length before = Length.ZERO;
        for (double mm = 6.4; mm <= 100; mm += 0.1) {
            KeySize key = KeySize.find(standard, Length.mm(mm)).orElseThrow();
            assertThat(key.width()).isGreaterThanOrEqualTo(before);
            assertThat(key.shaftDepth().plus(key.hubDepth())).isGreaterThanOrEqualTo(key.height());
            assertThat(key.width()).isLessThan(Length.mm(mm / 2));
            before = key.width();
        }
    }

    @Test
    void key_tooShort_saysSo() {
        Ask ask = Ask.of("key", "shaft", "30", "torque", "900 Nm", "hubLength", "20");

        assertThat(ask.yes("sound")).isFalse();
        assertThat(ask.length("lengthNeeded")).isGreaterThan(Length.mm(20));
        assertThat(ask.cautions()).anyMatch(say -> say.contains("too short"));
    }

    @Test
    void key_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("key", "shaft", "30", "torque", "250 Nm").isRefusedAt("hubLength", "hub or of the key");
        Ask.of("key", "shaft", "5", "torque", "2 Nm", "hubLength", "9").isRefusedAt("shaft", "over 6 up to 230 mm");
        Ask.of("key", "shaft", "30", "torque", "250", "hubLength", "9").isRefusedAt("torque", "N");
    }
}
