package chargehand.trade.weld;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WeldSumTest {
    static List<PublishedRow> fillets() {
        return PublishedRow.of("strength.json", "fillet_throat");
    }

    @ParameterizedTest
    @MethodSource("fillets")
    void fillet_ofLeg_hasTheThroatAndStressComputed(PublishedRow row) {
        Ask ask = Ask.of(
                "weld",
                "kind",
                "fillet",
                "leg",
                row.text("leg"),
                "length",
                row.text("length"),
                "load",
                row.text("P_N") + " N");

        assertThat(ask.mm("throat")).isCloseTo(row.want("throat"), row.within("throat"));
        assertThat(ask.megapascals("stress")).isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
    }

    /** Bhandari 8.2: two transverse fillets share 50 kN at 94 N/mm²; he adds 15 mm for starting and stopping. */
    @Test
    void fillet_ofTextbookExample_isAtTheStressHeAllows() {
        PublishedRow row = PublishedRow.of("strength.json", "fillet_double_transverse").stream()
                .filter(each -> each.has("P_N"))
                .findFirst()
                .orElseThrow();
        double each = row.want("length_each") - row.number("extra");
        Ask ask = Ask.of(
                "weld",
                "kind",
                "fillet",
                "leg",
                row.text("leg"),
                "length",
                2 * each + " mm",
                "load",
                row.text("P_N") + " N");

        // He takes the throat as 0.707 of the leg.
        assertThat(ask.megapascals("stress")).isCloseTo(row.number("tau"), withinPercentage(0.02));
        assertThat(ask.number("factor")).isCloseTo(1, within(5e-4));
    }

    @Test
    void weld_byThroat_isTheSameAsByLeg() {
        Ask leg = Ask.of("weld", "kind", "fillet", "leg", "10", "length", "100");
        Ask throat = Ask.of("weld", "kind", "fillet", "throat", "7.071068", "length", "100");

        assertThat(throat.mm("throat")).isCloseTo(leg.mm("throat"), within(2e-6));
        assertThat(square(throat)).isCloseTo(square(leg), withinPercentage(1e-4));
    }

    private static double square(Ask ask) {
        return ((Figure.OfArea) ask.figure("area")).area().squareMm();
    }

    @Test
    void doubleV_takesHalfTheMetalOfASingleOne() {
        Length plate = Length.mm(20);
        Angle sixty = Angle.degrees(60);

        assertThat(WeldSeam.doubleV(plate, sixty, Length.ZERO).areaMm2() * 2)
                .isCloseTo(WeldSeam.singleV(plate, sixty, Length.ZERO).areaMm2(), within(1e-9));
        // 20 mm plate at 60°: a triangle 20 deep and 2 × 20 tan 30° wide, 230.94 mm².
        assertThat(WeldSeam.singleV(plate, sixty, Length.ZERO).areaMm2()).isCloseTo(230.940, within(1e-3));
    }

    @Test
    void torque_roundAShaft_isThatOfTheForceAllRound() {
        Ask ask = Ask.of("weld", "kind", "fillet", "leg", "8", "diameter", "50", "torque", "900 Nm");
        // 900 N·m on a radius of 25 mm is 36 kN round a length of π·50 mm.
        Ask load = Ask.of("weld", "kind", "fillet", "leg", "8", "diameter", "50", "load", "36 kN");

        assertThat(ask.megapascals("stress")).isCloseTo(load.megapascals("stress"), withinPercentage(1e-4));
    }

    @Test
    void weld_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("weld", "kind", "fillet", "length", "50").isRefusedAt("leg", "leg or its throat");
        Ask.of("weld", "kind", "single-v", "length", "50").isRefusedAt("thickness", "thickness of the plate");
        Ask.of("weld", "kind", "fillet", "leg", "6").isRefusedAt("length", "length of weld");
        Ask.of("weld", "kind", "fillet", "leg", "6", "length", "90", "torque", "9 Nm")
                .isRefusedAt("diameter", "goes round");
        Ask.of("weld", "kind", "tack", "leg", "6", "length", "90").isRefusedAt("kind", "fillet");
    }
}
