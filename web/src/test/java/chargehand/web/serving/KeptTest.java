package chargehand.web.serving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KeptTest {
    private final List<Integer> made = new ArrayList<>();
    private final Kept<Integer, String> kept = new Kept<>(3);

    private String of(int key) {
        return kept.of(key, each -> {
            made.add(each);
            return "no. " + each;
        });
    }

    @Test
    void of_sameKeyAgain_isNotMadeAgain() {
        assertThat(of(1)).isEqualTo("no. 1");
        assertThat(of(1)).isEqualTo("no. 1");
        assertThat(made).containsExactly(1);
    }

    @Test
    void of_moreThanAreKept_theOneAskedForLongestAgoIsMadeAgain() {
        List.of(1, 2, 3, 1, 4, 1, 2).forEach(this::of);
        assertThat(made).containsExactly(1, 2, 3, 4, 2);
    }
}
