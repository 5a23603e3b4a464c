package chargehand.part.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ArcTest {
    /** Rounding to whole nanometres moves a chord's ends by less than this. */
    private static final double ROUNDING_NM = 1.5;

    @ParameterizedTest
    @ValueSource(doubles = {0.0001, 0.2, 1, 3, 25, 500})
    void chords_ofAnyRadius_stayNearTheArc(double mm) {
        double radius = mm * 1e6;
        List<Station> stations = new Arc(radius, 0, radius).chords(Math.PI, Math.PI / 2);

        for (int i = 1; i < stations.size(); i++) {
            Station one = stations.get(i - 1);
            Station other = stations.get(i);
            double middle = Math.hypot((one.z() + other.z()) / 2.0 - radius, (one.r() + other.r()) / 2.0);
            assertThat(radius - middle).isBetween(-ROUNDING_NM, Arc.CHORD_ERROR.nanometres() + ROUNDING_NM);
        }
    }

    /** A half ball holds 2/3 π r³. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 25})
    void volume_ofAHalfBall_isAsTheRuleSays(double mm) {
        Profile half = new Profile(new Arc(mm * 1e6, 0, mm * 1e6).chords(Math.PI, Math.PI / 2));

        double ball = 2.0 / 3 * Math.PI * mm * mm * mm;
        assertThat(half.volume().cubicMm()).isCloseTo(ball, within(ball * 2e-4));
    }
}
