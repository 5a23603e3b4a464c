package chargehand.trade.dividing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Angle;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The rules of dividing against trying every hole, and the laws they obey. */
class DividingTest {
    private static final List<IndexPlate> PLATES =
            List.of(IndexPlate.of(15, 16, 17, 18, 19, 20), IndexPlate.of(21, 23, 27, 29, 31, 33));

    @Test
    void divide_everyNumberToTwoHundred_agreesWithTryingEveryHole() {
        for (int worm : new int[] {40, 60, 90, 5}) {
            var head = Dividing.of(worm, PLATES);
            for (int divisions = 1; divisions <= 200; divisions++) {
                List<Indexed> ways = head.divide(divisions);

                assertThat(ways).isNotEmpty();
                assertThat(ways.getFirst().error().abs())
                        .as("%d:1 worm, %d divisions", worm, divisions)
                        .isEqualTo(leastError(head, divisions));
            }
        }
    }

    /** Every hole of every circle, alone and with every hole of every other circle on the plate, both ways. */
    private static BigFraction leastError(Dividing head, int divisions) {
        BigFraction crank = BigFraction.of(head.worm(), divisions);
        BigFraction least = BigFraction.of(1);
        for (IndexPlate plate : head.plates()) {
            for (int first : plate.circles()) {
                for (int second : plate.circles()) {
                    BigFraction error = leastError(crank, first, second).divide(head.worm());
                    least = error.compareTo(least) < 0 ? error : least;
                }
            }
        }
        return least;
    }

    private static BigFraction leastError(BigFraction crank, int first, int second) {
        int turns = crank.intValue();
        BigFraction beyond = crank.subtract(turns);
        double least = Double.MAX_VALUE;
        BigFraction best = BigFraction.ONE;
        for (int a = -first; a <= 2 * first; a++) {
            for (int b = first == second ? 0 : -second; b <= (first == second ? 0 : second); b++) {
                double rough = Math.abs((double) a / first + (double) b / second - beyond.doubleValue());
                boolean forward = (double) turns + (double) a / first + (double) b / second > 0;
                if (forward && rough < least - 1e-12) {
                    least = rough;
                    best = BigFraction.of(a, first)
                            .add(BigFraction.of(b, second))
                            .subtract(beyond)
                            .abs();
                }
            }
        }
        return best;
    }

    @Test
    void divide_exactWays_comeRoundToWholeTurns() {
        var head = Dividing.of(40, PLATES);
        for (int divisions = 1; divisions <= 200; divisions++) {
            for (Indexed way : head.divide(divisions)) {
                if (way.exact()) {
                    assertThat(way.way().crank().multiply(divisions)).isEqualTo(BigFraction.of(40));
                }
            }
        }
    }

    @Test
    void divide_plainExists_offersNothingHarder() {
        assertThat(Dividing.of(40, PLATES).divide(60)).allMatch(way -> way.way() instanceof Way.Plain);
    }

    @Test
    void divide_nearest_isSortedByError() {
        List<Indexed> ways = Dividing.of(40, PLATES).divide(127);

        assertThat(ways).noneMatch(Indexed::exact);
        assertThat(ways)
                .isSortedAccordingTo(Comparator.comparing(way -> way.error().abs()));
    }

    @Test
    void turn_angleOfOneDivision_isTheSameAsDividing() {
        var head = Dividing.of(40, PLATES);
        for (int divisions : new int[] {2, 3, 4, 5, 6, 8, 9, 10, 12, 15, 18, 20, 24, 36, 40, 45, 60, 72, 90, 120}) {
            assertThat(head.turn(Angle.degrees(360.0 / divisions))).isEqualTo(head.divide(divisions));
        }
    }

    @Test
    void turn_minutesAndSeconds_areTakenExactly() {
        // 5° 20′ is 16/27 of a crank turn on a 40:1 head: 9° a turn.
        assertThat(Dividing.of(40, PLATES).turn(Angle.degrees(5 + 20.0 / 60)).getFirst())
                .isEqualTo(new Indexed(new Way.Plain(0, 16, 27), BigFraction.ZERO));
    }

    @Test
    void holeTable_noExactCircle_neverErrsByMoreThanHalfAHole() {
        var head = Dividing.of(40, PLATES);
        double halfHole = 360.0 / 40 / 33 / 2;

        List<HoleTable.Place> places = HoleTable.of(head, 73, 33).places();

        assertThat(places).hasSize(73);
        assertThat(places)
                .allSatisfy(
                        place -> assertThat(Math.abs(place.error().degrees())).isLessThanOrEqualTo(halfHole + 1e-12));
        assertThat(places.getLast()).isEqualTo(new HoleTable.Place(73, 40, 0, Angle.degrees(0)));
    }

    @Test
    void dividing_impossibleHead_isRefused() {
        assertThatThrownBy(() -> Dividing.of(0, PLATES)).hasMessageContaining("1 to 400 turns");
        assertThatThrownBy(() -> Dividing.of(40, List.of())).hasMessageContaining("at least one plate");
        assertThatThrownBy(() -> new Dividing(40, PLATES, Optional.empty()).divide(0))
                .hasMessageContaining("from 1 to 100000");
        assertThatThrownBy(() -> IndexPlate.of(0, 20)).hasMessageContaining("1 to 1000 holes");
    }
}
