package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Good methods, written by hand and planned, each broken in one place many times over. */
final class MutationTest {
    private static final int LEAST_MUTANTS = 300;
    private static final int PER_METHOD = 60;
    private static final int WILD_PER_METHOD = 40;
    private static final double LEAST_CAUGHT = 0.99;
    private static final List<Mutator> MUTATORS = List.of(Mutator.values());
    private static final Kit KIT = DemoKit.kit();

    private record Good(String name, Part part, Method method) {}

    private static List<Good> goods() {
        Stream<Good> written =
                Stream.of(SmallWork.values()).map(work -> new Good(work.name(), work.drawn(), work.method()));
        Stream<Good> planned = DemoMethods.ALL.stream().map(demo -> new Good(demo.name(), demo.part(), demo.method()));
        return Stream.concat(written, planned).toList();
    }

    @Test
    void of_brokenMethods_nearlyAllCaught() {
        var random = new Random(20261103);
        var survivors = new ArrayList<String>();
        int mutants = 0;
        for (Good good : goods()) {
            for (int i = 0; i < PER_METHOD; i++) {
                Mutator mutator = MUTATORS.get(random.nextInt(MUTATORS.size()));
                Optional<Method> broken = mutator.broken(good.method(), random);
                if (broken.isPresent()) {
                    mutants++;
                    if (Replay.of(good.part(), broken.get(), KIT).made()) {
                        survivors.add(mutator + " of " + good.name());
                    }
                }
            }
        }
        assertThat(mutants).isGreaterThanOrEqualTo(LEAST_MUTANTS);
        assertThat((double) survivors.size() / mutants)
                .as("let pass: %s", survivors)
                .isLessThanOrEqualTo(1 - LEAST_CAUGHT);
    }

    /** Cuts with their places and sizes thrown about: whatever is written, the replay answers. */
    @Test
    void of_wildMethods_answered() {
        var random = new Random(20261104);
        for (Good good : goods()) {
            for (int i = 0; i < WILD_PER_METHOD; i++) {
                Method wild = Wild.of(good.method(), random);
                Proof proof = Replay.of(good.part(), wild, KIT);
                assertThat(proof.made()).isEqualTo(proof.faults().isEmpty());
                assertThat(proof.stages()).hasSameSizeAs(wild.setUps());
            }
        }
    }
}
