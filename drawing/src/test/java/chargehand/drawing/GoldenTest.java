package chargehand.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

final class GoldenTest {
    @Test
    void mayRewrite_whereOthersWorkIsChecked_isRefused() {
        assertThatThrownBy(() -> Golden.mayRewrite(true, "true")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Golden.mayRewrite(true, "TRUE")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void mayRewrite_elsewhere_isAsAsked() {
        assertThat(Golden.mayRewrite(true, "")).isTrue();
        assertThat(Golden.mayRewrite(false, "true")).isFalse();
        assertThat(Golden.mayRewrite(false, "")).isFalse();
    }
}
