package chargehand.trade.wheels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuadrantTest {
    private static final WheelSet SET = WheelSet.of(20, 30, 40, 50, 60, 65, 100, 120);

    @Test
    void arrange_compound_takesTheOrderThatClearsTheStuds() {
        // 20/120 first would put 60 + 40 against a wheel of 120: the 120 fouls the leadscrew.
        Train train = Train.of(List.of(20, 60), List.of(40, 120));

        Arrangement order = Quadrant.ROOMY.arrange(train, SET).orElseThrow();

        for (int i = 1; i < order.pairs().size(); i++) {
            Arrangement.Pair before = order.pairs().get(i - 1);
            Arrangement.Pair after = order.pairs().get(i);
            assertThat(before.driver() + before.driven()).isGreaterThanOrEqualTo(after.driver() + 15);
            assertThat(after.driver() + after.driven()).isGreaterThanOrEqualTo(before.driven() + 15);
        }
    }

    @Test
    void arrange_anyCompound_fitsWheneverSomeOrderWould() {
        var random = new Random(15);
        for (int i = 0; i < 2000; i++) {
            int least = 40 + random.nextInt(60);
            var quadrant = new Quadrant(least, least + random.nextInt(80));
            List<Integer> drivers = wheels(random);
            List<Integer> driven = wheels(random);

            boolean someOrder = inReach(quadrant, drivers, driven) || inReach(quadrant, drivers.reversed(), driven);

            assertThat(quadrant.arrange(Train.of(drivers, driven), SET).isPresent())
                    .as("%s of %s over %s", quadrant, drivers, driven)
                    .isEqualTo(someOrder);
        }
    }

    private static List<Integer> wheels(Random random) {
        return random.ints(2, 15, 121).boxed().toList();
    }

    private static boolean inReach(Quadrant quadrant, List<Integer> drivers, List<Integer> driven) {
        return quadrant.meshes(drivers.getFirst(), driven.getFirst())
                && quadrant.meshes(drivers.getLast(), driven.getLast());
    }

    @Test
    void arrange_singlePair_isBridgedByAnIdlerInReach() {
        Arrangement order = new Quadrant(80, 125)
                .arrange(Train.of(List.of(20), List.of(60)), SET)
                .orElseThrow();

        assertThat(order.idler()).hasValue(65);
        assertThat(order).hasToString("20 drives 60, on the leadscrew, through an idler of 65");
    }

    @Test
    void arrange_pairOutOfReach_isEmpty() {
        assertThat(new Quadrant(60, 100).arrange(Train.of(List.of(100), List.of(120)), SET))
                .isEmpty();
    }
}
