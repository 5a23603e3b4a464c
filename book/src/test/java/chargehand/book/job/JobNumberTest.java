package chargehand.book.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class JobNumberTest {
    @ParameterizedTest
    @ValueSource(strings = {"214", " 214 ", "#214", "0214"})
    void parse_ofANumberAsWritten_isThatJob(String text) {
        assertThat(JobNumber.parse(text)).contains(new JobNumber(214));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "-1", "2.5", "21 4", "##2", "job 214", "99999999999999", "٢١٤", "\u0000"})
    void parse_ofAnythingElse_isNone(String text) {
        assertThat(JobNumber.parse(text)).isEmpty();
    }

    @Test
    void number_outsideItsRange_isRefused() {
        assertThatThrownBy(() -> new JobNumber(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new JobNumber(10_000_000)).isInstanceOf(IllegalArgumentException.class);
    }
}
