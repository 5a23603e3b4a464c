package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class MutatedKitTest {
    private static final long SEED = 20260107;
    private static final int CASES = 500;

    @Test
    void read_mutatedFiles_soundOrRefusedWithAPlace() {
        Mutations mutations = new Mutations(SEED);
        Random random = new Random(SEED);
        List<String> names = new ArrayList<>(DemoKit.files().keySet());
        int refused = 0;
        for (int i = 0; i < CASES; i++) {
            String name = names.get(random.nextInt(names.size()));
            String text = mutations.of(DemoKit.file(name));
            refused += isRefused(name, text) ? 1 : 0;
        }
        assertThat(refused).isBetween(CASES / 4, CASES - 1);
    }

    /** Whether one changed file, read by itself, is refused; a refusal must stand up. */
    private static boolean isRefused(String name, String text) {
        List<FileFault> faults = switch (KitFiles.read(Map.of(name, text))) {
            case KitRead.Sound sound -> List.of();
            case KitRead.Refused(var all) ->
                all.stream().filter(fault -> fault.file().equals(name)).toList();
        };
        assertThat(faults).as(text).allSatisfy(fault -> {
            assertThat(fault.fault().line()).isPositive();
            assertThat(fault.fault().column()).isPositive();
            assertThat(fault.fault().say()).isNotBlank().endsWith(".");
        });
        return !faults.isEmpty();
    }
}
