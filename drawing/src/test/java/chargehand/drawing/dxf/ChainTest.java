package chargehand.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.picture.Arc;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is left of lines under clear paper, and areas cut into triangles. */
final class ChainTest {
    private static final Area SQUARE = Area.of(Path.box(Point.of(2, -1), 4, 2));

    /** Shaped like the gap between two zigzags: no box, and hollow at one side. */
    private static final Area HOLLOW = Area.of(
            Path.round(List.of(Point.of(0, 0), Point.of(10, 0), Point.of(10, 10), Point.of(6, 4), Point.of(0, 10))));

    @Test
    void outside_aLineThroughAnArea_isLeftAtBothSides() {
        Chain line = new Chain(List.of(new Trace.Straight(Point.of(0, 0), Point.of(10, 0))), false);

        List<Chain> left = line.outside(SQUARE);

        assertThat(left).hasSize(2);
        assertThat(left.getFirst().traces().getFirst().at(1)).isEqualTo(Point.of(2, 0));
        assertThat(left.getLast().traces().getFirst().at(0)).isEqualTo(Point.of(6, 0));
    }

    @Test
    void outside_aLineWithinAnArea_isGone() {
        Chain line = new Chain(List.of(new Trace.Straight(Point.of(3, 0), Point.of(5, 0.5))), false);

        assertThat(line.outside(SQUARE)).isEmpty();
    }

    @Test
    void outside_aClosedOutlineBesideAnArea_staysWhole() {
        Chain outline = new Chain(Trace.along(Path.box(Point.of(10, 10), 5, 5)), true);

        assertThat(outline.outside(SQUARE)).containsExactly(outline);
    }

    @Test
    void outside_aCircleAcrossACorner_keepsThreeQuarters() {
        Chain circle = new Chain(List.of(new Trace.Round(Arc.round(Point.of(2, -1), 0.5))), true);

        double left = circle.outside(SQUARE).stream()
                .flatMap(chain -> chain.traces().stream())
                .mapToDouble(trace -> Math.abs(((Trace.Round) trace).arc().sweep()))
                .sum();

        assertThat(left).isCloseTo(1.5 * Math.PI, within(1e-9));
    }

    /** A second way: every point of a line is kept just where it does not lie within the area. */
    @Test
    void outside_linesByChance_keepWhatPointForPointLiesOutside() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Trace trace = new Trace.Straight(by(random), by(random));
            List<Chain> left = new Chain(List.of(trace), false).outside(HOLLOW);
            long outside = IntStream.range(0, 1000)
                    .filter(at -> !HOLLOW.holds(trace.at((at + 0.5) / 1000)))
                    .count();
            double kept = left.stream()
                    .flatMap(chain -> chain.traces().stream())
                    .mapToDouble(piece -> piece.at(0).distance(piece.at(1)))
                    .sum();
            double length = trace.at(0).distance(trace.at(1));

            assertThat(kept).isCloseTo(length * outside / 1000, within(0.005 * length));
        }
    }

    private static Point by(Random random) {
        return Point.of(random.nextDouble() * 16 - 3, random.nextDouble() * 16 - 3);
    }

    @Test
    void triangles_ofAHollowArea_haveItsSizeTogetherAndLieWithinIt() {
        List<List<Point>> triangles = HOLLOW.triangles();

        assertThat(triangles).hasSize(3);
        assertThat(triangles.stream().mapToDouble(ChainTest::size).sum()).isCloseTo(70, within(1e-9));
        assertThat(triangles)
                .allMatch(three -> HOLLOW.holds(Point.of(
                        three.stream().mapToDouble(Point::x).sum() / 3,
                        three.stream().mapToDouble(Point::y).sum() / 3)));
        assertThat(HOLLOW.isQuadrilateral()).isFalse();
        assertThat(SQUARE.isQuadrilateral()).isTrue();
    }

    private static double size(List<Point> three) {
        Point a = three.get(0);
        Point b = three.get(1);
        Point c = three.get(2);
        return Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y())) / 2;
    }
}
