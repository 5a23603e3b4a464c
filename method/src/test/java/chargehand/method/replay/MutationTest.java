package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Good methods, written by hand and planned, each broken in one place many times over. */
final class MutationTest {
    private static final int LEAST_MUTANTS = 1000;
    private static final int PER_KIND = 2;
    private static final int WILD_PER_METHOD = 15;
    private static final double LEAST_CAUGHT = 0.99;
    private static final Kit KIT = DemoKit.kit();
    private static final Path KEPT = Path.of("..", "docs", "mutants.md");
    private static final List<Breaking> KINDS = Stream.<Breaking[]>of(
                    Mutator.values(), SettingMutator.values(), WorkMutator.values())
            .flatMap(Arrays::stream)
            .toList();
    private static final List<Good> GOODS = Good.all();

    /** Each mutant once; what is harmless by its kind's rule is told apart before the replay and counted by itself. */
    @Test
    void of_brokenMethods_nearlyAllCaught() throws IOException {
        var random = new Random(20261103);
        var tally = new Tally();
        for (Breaking kind : KINDS) {
            for (Good good : GOODS) {
                var seen = new HashSet<Method>();
                for (int i = 0; i < PER_KIND; i++) {
                    Optional<Mutant> mutant = kind.broken(good, random);
                    if (mutant.isPresent() && seen.add(mutant.get().method())) {
                        boolean made = Replay.of(good.part(), mutant.get().method(), KIT)
                                .made();
                        tally.count(kind.name(), good.name(), mutant.get(), made);
                    }
                }
            }
        }
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(KEPT, tally.table(GOODS.size()));
        }
        assertThat(tally.broken()).isGreaterThanOrEqualTo(LEAST_MUTANTS);
        assertThat(tally.caughtShare()).as("%s", tally).isGreaterThanOrEqualTo(LEAST_CAUGHT);
    }

    /** Cuts with their places and sizes thrown about: whatever is written, the replay answers. */
    @Test
    void of_wildMethods_answered() {
        var random = new Random(20261104);
        for (Good good : GOODS) {
            for (int i = 0; i < WILD_PER_METHOD; i++) {
                Method wild = Wild.of(good.method(), random);
                Proof proof = Replay.of(good.part(), wild, KIT);
                assertThat(proof.made()).isEqualTo(proof.faults().isEmpty());
                assertThat(proof.stages()).hasSameSizeAs(wild.setUps());
            }
        }
    }
}
