package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.DemoParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.ProjectionSymbol;
import chargehand.drawing.view.AxialScale;
import chargehand.part.Body;
import chargehand.part.Drafting;
import chargehand.part.Part;
import chargehand.part.Projection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where views stand in first and third angle (ISO 5456-2, from memory of the standard). */
final class ProjectionTest {
    private static Part drawnIn(Projection projection, String demo) {
        Part part = DemoParts.read(demo);
        return new Part(
                part.title(),
                part.drawing(),
                part.issue(),
                part.unit(),
                part.material(),
                part.duty(),
                part.general(),
                part.texture(),
                part.body(),
                part.ties(),
                part.notes(),
                new Drafting(projection, List.of()));
    }

    /** The main view and the one beside, below or above it. */
    private static List<Box> views(Projection projection, String demo) {
        return Fitting.of(drawnIn(projection, demo)).views().stream()
                .limit(2)
                .map(DrawnView::bounds)
                .toList();
    }

    @Test
    void of_aBlock_putsTheViewFromAboveBelowInFirstAngleAndAboveInThird() {
        List<Box> first = views(Projection.FIRST_ANGLE, "shim");
        List<Box> third = views(Projection.THIRD_ANGLE, "shim");

        assertThat(first.getLast().top()).isGreaterThan(first.getFirst().bottom());
        assertThat(third.getLast().bottom()).isLessThan(third.getFirst().top());
    }

    @Test
    void of_aHexagonSeenFromTheLeft_standsAtTheRightInFirstAngleAndAtTheLeftInThird() {
        List<Box> first = beside(Projection.FIRST_ANGLE, "union");
        List<Box> third = beside(Projection.THIRD_ANGLE, "union");

        assertThat(first.getLast().left()).isGreaterThan(first.getFirst().right());
        assertThat(third.getLast().right()).isLessThan(third.getFirst().left());
    }

    /** The main view and the end view beside it, on paper that is wide enough. */
    private static List<Box> beside(Projection projection, String demo) {
        Part part = drawnIn(projection, demo);
        var body = (Body.Turned) part.body();
        return Layout.of(part, body, AxialScale.of(1), Layout.Ends.BESIDE, 400).stream()
                .limit(2)
                .map(DrawnView::bounds)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Projection.class)
    void symbol_showsTheSmallEndOfTheFrustumTowardsTheLeft(Projection projection) {
        List<Mark> marks = ProjectionSymbol.marks(Local.at(new Point(0, 0)), 3.5, projection);
        Mark.Stroke frustum = marks.stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .findFirst()
                .orElseThrow();
        Box circles =
                Box.of(marks.stream().filter(Mark.Circle.class::isInstance).toList());
        Box box = Box.of(frustum);

        assertThat(frustum.style()).isEqualTo(LineStyle.SYMBOL);
        assertThat(frustum.path().start().x()).isEqualTo(box.left());
        assertThat(box.height()).isEqualTo(circles.height());
        assertThat(circles.left() > box.right()).isEqualTo(projection == Projection.FIRST_ANGLE);
        assertThat(circles.right() < box.left()).isEqualTo(projection == Projection.THIRD_ANGLE);
    }
}
