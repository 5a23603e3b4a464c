package chargehand.drawing.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CurveTest {
    @Test
    void of_aQuarterClockwise_bulgesUpAndKeepsItsRadius() {
        List<Curve> curves = Curve.of(Point.of(-5, 0), new Path.Bend(Point.of(0, -5), 5, true));

        assertThat(curves).hasSize(1);
        Point middle = middle(Point.of(-5, 0), curves.getFirst());
        assertThat(middle.distance(Point.of(0, 0))).isCloseTo(5, within(0.002));
        assertThat(middle.x()).isNegative();
        assertThat(middle.y()).isNegative();
    }

    @Test
    void of_halfACircleEitherWay_endsWhereItShould() {
        for (boolean clockwise : List.of(true, false)) {
            List<Curve> curves = Curve.of(Point.of(0, 0), new Path.Bend(Point.of(10, 0), 5, clockwise));

            assertThat(curves).hasSize(2);
            assertThat(curves.getLast().to().distance(Point.of(10, 0))).isCloseTo(0, within(1e-9));
            assertThat(curves.getFirst().to().y()).isCloseTo(clockwise ? -5 : 5, within(1e-9));
        }
    }

    private static Point middle(Point from, Curve curve) {
        double x = (from.x()
                        + 3 * curve.leave().x()
                        + 3 * curve.arrive().x()
                        + curve.to().x())
                / 8;
        double y = (from.y()
                        + 3 * curve.leave().y()
                        + 3 * curve.arrive().y()
                        + curve.to().y())
                / 8;
        return Point.of(x, y);
    }
}
