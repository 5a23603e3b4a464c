package chargehand.method.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SpeedsTest {
    private static final Speeds SPEEDS = new Speeds(List.of(rpm(330), rpm(27), rpm(125)));

    private static SpindleSpeed rpm(double rpm) {
        return SpindleSpeed.rpm(rpm);
    }

    @Test
    void notAbove_betweenSpeeds_theSlower() {
        assertThat(SPEEDS.notAbove(rpm(329))).contains(rpm(125));
        assertThat(SPEEDS.notAbove(rpm(330))).contains(rpm(330));
        assertThat(SPEEDS.notAbove(rpm(5000))).contains(rpm(330));
        assertThat(SPEEDS.notAbove(rpm(20))).isEmpty();
    }

    @Test
    void plate_anyOrder_risingOrder() {
        assertThat(SPEEDS.slowest()).isEqualTo(rpm(27));
        assertThat(SPEEDS.fastest()).isEqualTo(rpm(330));
    }

    @Test
    void of_noneOrNought_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Speeds(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Speeds(List.of(rpm(0))));
    }

    @Test
    void feedNotAbove_betweenFeeds_theFiner() {
        Feeds feeds = new Feeds(List.of(Length.mm(0.2), Length.mm(0.05)));
        assertThat(feeds.notAbove(Length.mm(0.19))).contains(Length.mm(0.05));
        assertThat(feeds.notAbove(Length.mm(0.04))).isEmpty();
        assertThat(Feeds.byHand().notAbove(Length.mm(1))).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> new Feeds(List.of(Length.ZERO)));
    }
}
