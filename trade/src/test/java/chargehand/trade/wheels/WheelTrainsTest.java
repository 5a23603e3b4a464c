package chargehand.trade.wheels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against the plain way: every train there is, sorted. */
class WheelTrainsTest {
    private static final int HOW_MANY = 12;

    private final Random random = new Random(127);

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void best_smallSets_areThoseFoundByTryingEveryTrain(int pairs) {
        for (int i = 0; i < 12; i++) {
            WheelSet set = anySet(pairs == 3 ? 8 : 10);
            BigFraction wanted = BigFraction.of(1 + random.nextInt(60), 1 + random.nextInt(60));
            List<BigFraction> gearbox = i % 3 == 0 ? List.of() : anyGearbox();

            List<Tried> found =
                    WheelTrains.of(set).withGearbox(gearbox).withPairs(pairs).best(wanted, HOW_MANY);

            assertThat(found).isEqualTo(everyTrain(set, gearbox, pairs, wanted, train -> true));
        }
    }

    @Test
    void best_withinQuadrant_areThoseFoundByTryingEveryTrain() {
        var quadrant = new Quadrant(70, 130);
        for (int i = 0; i < 8; i++) {
            WheelSet set = anySet(9);
            BigFraction wanted = BigFraction.of(8, 19);

            List<Tried> found = WheelTrains.of(set).within(quadrant).best(wanted, HOW_MANY);

            assertThat(found)
                    .isEqualTo(everyTrain(
                            set,
                            List.of(),
                            2,
                            wanted,
                            train -> quadrant.arrange(train, set).isPresent()));
        }
    }

    private WheelSet anySet(int wheels) {
        return new WheelSet(random.ints(wheels, 4, 21).map(n -> n * 5).boxed().toList());
    }

    private List<BigFraction> anyGearbox() {
        return List.of(BigFraction.ONE, BigFraction.of(1 + random.nextInt(9), 1 + random.nextInt(9)));
    }

    private static List<Tried> everyTrain(
            WheelSet set, List<BigFraction> gearbox, int pairs, BigFraction wanted, Predicate<Train> suits) {
        var trains = new HashSet<Train>();
        for (BigFraction ratio : gearbox.isEmpty() ? List.of(BigFraction.ONE) : gearbox) {
            extend(new ArrayList<>(), new ArrayList<>(set.teeth()), pairs * 2, picked -> {
                List<Integer> drivers = picked.subList(0, picked.size() / 2);
                List<Integer> driven = picked.subList(picked.size() / 2, picked.size());
                trains.add(new Train(drivers, driven, ratio));
            });
        }
        return trains.stream()
                .filter(suits)
                .map(train -> Tried.against(wanted, train))
                .sorted(Tried.BEST_FIRST)
                .limit(HOW_MANY)
                .toList();
    }

    /** Every sequence of wheels, of every even length: the nested loops. */
    private static void extend(List<Integer> picked, List<Integer> left, int most, Consumer<List<Integer>> take) {
        if (!picked.isEmpty() && picked.size() % 2 == 0) {
            take.accept(List.copyOf(picked));
        }
        if (picked.size() == most) {
            return;
        }
        for (int teeth : new HashSet<>(left)) {
            picked.add(teeth);
            left.remove(Integer.valueOf(teeth));
            extend(picked, left, most, take);
            left.add(teeth);
            picked.removeLast();
        }
    }

    /** A whole page of exact trains: equal merit must be told apart by the number of wheels, not by rounding. */
    @Test
    void best_moreExactTrainsThanWanted_areThoseWithTheFewestWheels() {
        WheelSet set = WheelSet.of(20, 24, 28, 30, 40, 42, 48, 56, 60);
        BigFraction half = BigFraction.of(1, 2);

        List<Tried> found = WheelTrains.of(set).withPairs(3).best(half, HOW_MANY);

        assertThat(found)
                .isEqualTo(everyTrain(set, List.of(), 3, half, train -> true))
                .allMatch(Tried::exact);
    }

    @Test
    void best_neverUsesAWheelMoreOftenThanOwned() {
        WheelSet set = WheelSet.of(20, 20, 40, 60);

        List<Tried> all = WheelTrains.of(set).best(BigFraction.of(1, 2), 1000);

        assertThat(all).allSatisfy(tried -> {
            var used = new ArrayList<>(tried.train().drivers());
            used.addAll(tried.train().driven());
            assertThat(used)
                    .allSatisfy(teeth -> assertThat(
                                    (int) used.stream().filter(teeth::equals).count())
                            .isLessThanOrEqualTo(set.count(teeth)));
        });
        assertThat(all.getFirst().train()).isEqualTo(Train.of(List.of(20), List.of(40)));
    }

    @Test
    void best_ratioTurnedOver_givesTheTrainTurnedOver() {
        WheelSet set = WheelSet.of(20, 25, 30, 35, 38, 40, 45, 50, 55, 60, 65);

        Tried there = WheelTrains.of(set).best(BigFraction.of(8, 19), 1).getFirst();
        Tried back = WheelTrains.of(set).best(BigFraction.of(19, 8), 1).getFirst();

        assertThat(there.exact()).isTrue();
        assertThat(back.train().ratio()).isEqualTo(there.train().ratio().reciprocal());
    }

    @Test
    void best_oneWheelOnly_makesNoTrain() {
        assertThat(WheelTrains.of(WheelSet.of(40)).best(BigFraction.ONE, 5)).isEmpty();
    }

    @Test
    void withPairs_four_isRefused() {
        assertThatThrownBy(() -> WheelTrains.of(WheelSet.of(40, 50)).withPairs(4))
                .hasMessageContaining("1 to 3 pairs");
    }

    @Test
    void wheelSet_toothlessOrHuge_isRefused() {
        assertThatThrownBy(() -> WheelSet.of(0, 40)).hasMessageContaining("10 to 400 teeth");
        assertThatThrownBy(() -> WheelSet.of(40, 4000)).hasMessageContaining("10 to 400 teeth");
        assertThatThrownBy(() -> new WheelSet(List.of())).hasMessageContaining("1 to 60 wheels");
    }
}
