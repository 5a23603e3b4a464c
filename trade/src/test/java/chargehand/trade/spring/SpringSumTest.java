package chargehand.trade.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpringSumTest {
    private static final String ROWS = "strength.json";

    static List<PublishedRow> springs() {
        return PublishedRow.of(ROWS, "spring_rate");
    }

    static List<PublishedRow> wahl() {
        return PublishedRow.of(ROWS, "wahl");
    }

    @ParameterizedTest
    @MethodSource("springs")
    void rate_andStress_areAsComputed(PublishedRow row) {
        var spring = new Spring(Length.mm(row.number("d")), Length.mm(row.number("D")), row.number("active"));
        double rate = spring.rate(Pressure.megapascals(row.number("G"))).newtonsPerMm();

        assertThat(rate).isCloseTo(row.want("k_N_mm"), row.within("k_N_mm"));
        assertThat(spring.wahl()).isCloseTo(row.want("K_wahl"), row.within("K_wahl"));
        assertThat(spring.stress(Force.newtons(row.number("F"))).megapascals())
                .isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
        assertThat(row.number("F") / rate).isCloseTo(row.want("deflection"), row.within("deflection"));
    }

    @ParameterizedTest
    @MethodSource("wahl")
    void wahl_ofIndex_isThatOfTheTextbook(PublishedRow row) {
        var spring = new Spring(Length.mm(10), Length.mm(10 * row.number("C")), 5);

        assertThat(spring.wahl()).isCloseTo(row.want("K"), row.within("K"));
    }

    @Test
    void rate_ofTextbookSpring_takesTheTurnsHeFinds() {
        PublishedRow row = PublishedRow.of(ROWS, "spring_turns").getFirst();
        var spring = new Spring(Length.mm(row.number("d")), Length.mm(row.number("D")), row.want("N"));

        assertThat(spring.rate(Pressure.megapascals(row.number("G"))).newtonsPerMm())
                .isCloseTo(row.number("k"), withinPercentage(0.001));
    }

    /** Bhandari 10.1: 7 mm wire on 42 mm, 8 active coils, squared and ground. */
    @Test
    void solid_ofTextbookSpring_isTenCoilsOfWire() {
        PublishedRow row = PublishedRow.of(ROWS, "spring_design").getFirst();

        assertThat(SpringEnds.CLOSED_GROUND.total(row.want("N"))).isEqualTo(row.want("Nt"));
        assertThat(SpringEnds.CLOSED_GROUND.solid(Length.mm(row.want("d")), row.want("N")))
                .isEqualTo(Length.mm(70));
    }

    @Test
    void spring_obeysItsScalingLaws() {
        var random = new Random(8);
        var modulus = Pressure.megapascals(80_000);
        for (int i = 0; i < 200; i++) {
            double d = 0.5 + random.nextDouble() * 8;
            double mean = d * (4 + random.nextDouble() * 10);
            double coils = 3 + random.nextDouble() * 20;
            var spring = new Spring(Length.mm(d), Length.mm(mean), coils);
            var longer = new Spring(Length.mm(d), Length.mm(mean), 2 * coils);
            var larger = new Spring(Length.mm(2 * d), Length.mm(2 * mean), coils);

            double rate = spring.rate(modulus).newtonsPerMm();
            assertThat(longer.rate(modulus).newtonsPerMm()).isCloseTo(rate / 2, withinPercentage(1e-4));
            assertThat(larger.rate(modulus).newtonsPerMm()).isCloseTo(2 * rate, withinPercentage(1e-2));
            assertThat(spring.wahl()).isGreaterThan(1);
        }
    }

    @Test
    void spring_byDeflection_isTheSameAsByItsLoad() {
        Ask byLoad = Ask.of("spring", "wire", "3", "mean", "24", "coils", "8", "load", "150 N");
        Ask byTravel = Ask.of(
                "spring", "wire", "3", "mean", "24", "coils", "8", "deflection", byLoad.mm("deflection") + " mm");

        assertThat(byTravel.megapascals("stress")).isCloseTo(byLoad.megapascals("stress"), withinPercentage(1e-4));
    }

    @Test
    void spring_outsideInsideOrMean_areTheSameSpring() {
        Ask mean = Ask.of("spring", "wire", "3", "mean", "24", "coils", "8");
        Ask outside = Ask.of("spring", "wire", "3", "outside", "27", "coils", "8");
        Ask inside = Ask.of("spring", "wire", "3", "inside", "21", "coils", "8");

        assertThat(outside.figure("rate")).isEqualTo(mean.figure("rate"));
        assertThat(inside.figure("rate")).isEqualTo(mean.figure("rate"));
    }

    @Test
    void spring_solidLoad_isRateTimesTheRoomLeft() {
        Ask ask = Ask.of("spring", "wire", "3", "mean", "24", "coils", "8", "free", "60");

        assertThat(ask.mm("solid")).isEqualTo(30);
        double rate = ((Figure.OfSpringRate) ask.figure("rate")).rate().newtonsPerMm();
        assertThat(ask.newtons("solidLoad")).isCloseTo(30 * rate, within(1e-9));
    }

    @Test
    void spring_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("spring", "wire", "3", "coils", "8").isRefusedAt("mean", "one of the mean");
        Ask.of("spring", "wire", "3", "mean", "24", "inside", "21", "coils", "8")
                .isRefusedAt("mean", "one of the mean");
        Ask.of("spring", "wire", "20", "mean", "24", "coils", "8").isRefusedAt("wire", "times the wire");
        Ask.of("spring", "wire", "3", "mean", "24", "coils", "8", "load", "9 N", "deflection", "9")
                .isRefusedAt("load", "one of");
        Ask.of("spring", "wire", "3", "mean", "24", "coils", "8", "free", "20").isRefusedAt("free", "solid");
        Ask.of("spring", "wire", "3", "mean", "24", "coils", "8", "material", "wood")
                .isRefusedAt("material", "music wire");
    }
}
