package chargehand.drawing.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What crosses what, against plain reckoning from point to point along the lines. */
final class SegmentTest {
    private static final int STEPS = 400;
    private static final int TRIALS = 300;

    private final Random random = new Random(11);

    private Segment any() {
        return new Segment(point(), point());
    }

    private Point point() {
        return Point.of(random.nextDouble() * 20 - 10, random.nextDouble() * 20 - 10);
    }

    private static List<Point> along(Segment line) {
        return IntStream.rangeClosed(0, STEPS)
                .mapToObj(step -> line.from().between(line.to(), (double) step / STEPS))
                .toList();
    }

    @Test
    void distance_toAPoint_isThatOfTheNearestPlaceOnTheLine() {
        for (int i = 0; i < TRIALS; i++) {
            Segment line = any();
            Point point = point();
            double least =
                    along(line).stream().mapToDouble(point::distance).min().orElseThrow();

            assertThat(line.distance(point)).isCloseTo(least, within(line.length() / STEPS));
        }
    }

    @Test
    void crosses_anotherLine_isWhereItsEndsLieOnBothSidesOfEachOther() {
        for (int i = 0; i < TRIALS; i++) {
            Segment one = any();
            Segment other = any();
            boolean sides = side(one, other.from()) != side(one, other.to())
                    && side(other, one.from()) != side(other, one.to());

            assertThat(one.crosses(other)).isEqualTo(sides);
            assertThat(other.crosses(one)).isEqualTo(sides);
        }
    }

    private static boolean side(Segment line, Point point) {
        double dx = line.to().x() - line.from().x();
        double dy = line.to().y() - line.from().y();
        return dx * (point.y() - line.from().y())
                > dy * (point.x() - line.from().x());
    }

    @Test
    void meets_aBox_isWhereAPlaceOfTheLineLiesInIt() {
        Box box = new Box(-4, -3, 5, 2);
        for (int i = 0; i < TRIALS; i++) {
            Segment line = any();
            boolean within = along(line).stream().anyMatch(box::holds);
            boolean nearly = along(line).stream().anyMatch(box.grown(0.1)::holds);

            assertThat(line.meets(box)).isIn(within, nearly);
        }
    }

    @Test
    void isNearer_thanTheLeastDistanceAndALittle_holdsAndIsNotThanLess() {
        for (int i = 0; i < TRIALS; i++) {
            Segment one = any();
            Segment other = any();
            double least =
                    along(one).stream().mapToDouble(other::distance).min().orElseThrow();
            if (!one.crosses(other)) {
                assertThat(one.isNearer(other, least + 1e-9)).isTrue();
                assertThat(one.isNearer(other, Math.max(0, least - one.length() / STEPS)))
                        .isFalse();
            }
        }
    }
}
