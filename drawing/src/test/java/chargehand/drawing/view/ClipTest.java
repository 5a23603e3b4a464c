package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

final class ClipTest {
    private static final List<Point> SQUARE =
            List.of(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 10));

    private final Clip clip = Clip.along(SQUARE);

    @Test
    void within_aLineRightAcross_keepsItsMiddle() {
        Mark across = line(-5, 4, 15, 4);

        assertThat(clip.within(List.of(across))).containsExactly(line(0, 4, 10, 4));
        assertThat(clip.outside(List.of(across))).containsExactly(line(-5, 4, 0, 4), line(10, 4, 15, 4));
    }

    @Test
    void within_aMarkThatDoesNotCross_keepsItWhole() {
        Mark circle = new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(5, 5), 3);

        assertThat(clip.within(List.of(circle))).containsExactly(circle);
        assertThat(clip.outside(List.of(circle))).isEmpty();
    }

    @Test
    void within_aHalfCircleBendingOut_keepsTheArcThatLiesWithin() {
        Path arch = new Path(new Point(-4, 5), List.of(new Path.Bend(new Point(4, 5), 4, true)), false);

        List<Mark> kept = clip.within(List.of(new Mark.Stroke(LineStyle.WIDE, Ink.INK, arch)));

        assertThat(length(kept)).isCloseTo(Math.PI * 4 / 2, within(0.01));
        assertThat(Drawn.of(kept, LineStyle.WIDE).passes(new Point(4 / Math.sqrt(2), 5 - 4 / Math.sqrt(2)), 0.01))
                .as("clockwise from the left goes over the top")
                .isTrue();
    }

    /** A line is no longer and no shorter for being cut. */
    @Test
    void withinAndOutside_ofAnyLine_makeItsLengthTogether() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        List<Point> star = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            star.add(new Point(5, 5).towards(i * 360.0 / 14 + 3, i % 2 == 0 ? 6 : 2.5));
        }
        Clip jagged = Clip.along(star);
        for (int i = 0; i < 500; i++) {
            Mark line = line(at(random), at(random), at(random), at(random));
            double whole = length(List.of(line));
            double within = length(jagged.within(List.of(line)));

            assertThat(within + length(jagged.outside(List.of(line)))).isCloseTo(whole, within(0.01));
            assertThat(jagged.within(List.of(line)))
                    .allMatch(piece -> jagged.holds(Box.of(piece).centre()));
        }
    }

    private static double at(RandomGenerator random) {
        return random.nextDouble(-3, 13);
    }

    private static Mark line(double x1, double y1, double x2, double y2) {
        return new Mark.Line(LineStyle.WIDE, Ink.INK, new Point(x1, y1), new Point(x2, y2));
    }

    private static double length(List<Mark> marks) {
        return Drawn.of(marks, LineStyle.WIDE).lines().stream()
                .mapToDouble(Segment::length)
                .sum();
    }
}
