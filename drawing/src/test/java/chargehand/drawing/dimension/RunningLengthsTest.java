package chargehand.drawing.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Side;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Running dimensions of ISO 129-1, from memory of the standard; when they are chosen is our own rule. */
final class RunningLengthsTest {
    private static final LengthStack BELOW = new LengthStack(Rail.level(Side.BELOW), 20, x -> 20);

    /** So many lengths from 0, each so much longer than the one before (mm). */
    private static List<Span> star(int count, double step) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> new Span(0, i * step, Wording.of(Integer.toString(i * 10))))
                .toList();
    }

    private static long circles(List<Placing> placed) {
        return placed.stream()
                .flatMap(placing -> placing.signs().stream())
                .filter(Mark.Circle.class::isInstance)
                .count();
    }

    @Test
    void draw_fewLengthsFromOneFace_stacksThem() {
        List<Placing> placed = BELOW.draw(star(5, 20), List.of());

        assertThat(circles(placed)).isZero();
        assertThat(placed.stream().mapToDouble(one -> one.tips().getFirst().y()).distinct())
                .hasSize(5);
    }

    @Test
    void draw_manyLengthsFromOneFace_setsThemOnOneLineFromACircle() {
        List<Placing> placed = BELOW.draw(star(10, 12), List.of());

        assertThat(circles(placed)).isEqualTo(1);
        assertThat(placed.stream().flatMap(one -> one.tips().stream()))
                .hasSize(10)
                .allMatch(tip -> tip.y() == 30);
        assertThat(placed).extracting(Placing::says).contains("10", "100");
    }

    @Test
    void draw_manyLengthsWithoutRoomForTheirValues_stacksThem() {
        assertThat(circles(BELOW.draw(star(10, 3), List.of()))).isZero();
    }

    @Test
    void of_lengthsThatOverlapTheirNeighboursArrows_letsNoExtensionLineThroughAnyOfThem() {
        List<Span> spans = List.of(
                new Span(0, 40, Wording.of("40")),
                new Span(40, 43, Wording.of("3")),
                new Span(43, 80, Wording.of("37")),
                new Span(0, 120, Wording.of("120")),
                new Span(90, 120, Wording.of("30")));

        assertThat(Tiers.crossings(Tiers.of(spans, List.of(), List.of()), List.of()))
                .isZero();
    }
}
