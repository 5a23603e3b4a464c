package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.SampleParts;
import chargehand.drawing.Turning;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SideViewTest {
    /** Crest and root at least twice the wide line apart: ISO 6410-1 (abstract). */
    @Test
    void of_aFineThreadDrawnSmall_keepsItsRootClearOfItsCrest() {
        Turning t = Turning.mm("stud");
        Solid stud =
                Solid.of(t.thread("thread", "M10x1", "20", t.plain(), t.plain()).body());
        View view = SideView.of(new Look(stud, AxialScale.of(0.5), Cut.NONE));

        List<Mark.Line> roots = narrow(view);
        assertThat(roots).hasSize(2);
        assertThat(Math.abs(roots.getFirst().from().y())).isCloseTo(2.5 - 1.0, within(1e-6));
    }

    @Test
    void of_aCoarseThreadDrawnLarge_putsItsRootWhereItIs() {
        Turning t = Turning.mm("stud");
        Solid stud =
                Solid.of(t.thread("thread", "M24", "30", t.plain(), t.plain()).body());
        View view = SideView.of(new Look(stud, AxialScale.of(2), Cut.NONE));
        double root = stud.threads().getFirst().root().radiusAfter(Length.ZERO).mm();

        assertThat(Math.abs(narrow(view).getFirst().from().y())).isCloseTo(2 * root, within(1e-6));
    }

    /** A hexagon seen from the side with a corner on top shows three faces: two edges, half a corner's height from the axis. */
    @Test
    void of_aHexagon_showsThreeFaces() {
        Turning t = Turning.mm("nut");
        Solid nut = Solid.of(
                t.polygon("hexagon", 6, "30", "12", t.plain(), t.plain()).body());
        View view = SideView.of(new Look(nut, AxialScale.of(1), Cut.NONE));
        double corner = 30 / Math.sqrt(3);

        assertThat(view.bounds().top()).isCloseTo(-corner, within(0.001));
        assertThat(view.marks())
                .filteredOn(mark -> mark instanceof Mark.Line line
                        && line.from().y() == line.to().y()
                        && Math.abs(Math.abs(line.from().y()) - corner / 2) < 0.001)
                .isNotEmpty();
    }

    /** A square on a round part: a flat on top, narrow crossed diagonals on the one in front. */
    @Test
    void of_aSquare_crossesTheFlatInFront() {
        Part part = SampleParts.square();
        Solid solid = Solid.of((Body.Turned) part.body());
        View view = SideView.of(new Look(solid, AxialScale.of(1), Cut.NONE));

        assertThat(narrow(view))
                .filteredOn(line -> line.from().y() * line.to().y() < 0)
                .hasSize(2)
                .allMatch(line -> Math.abs(line.to().x() - line.from().x()) == 30.0);
    }

    @Test
    void of_aBrokenView_keepsBothEndsAndShortensTheMiddle() {
        Solid ram = Solid.of((Body.Turned) SampleParts.ram().body());
        AxialScale whole = AxialScale.of(1);
        AxialScale broken = Shortening.of(ram, 1);

        assertThat(broken.gaps()).hasSize(1);
        assertThat(broken.x(Length.mm(30))).isCloseTo(whole.x(Length.mm(30)), within(1e-9));
        double left = whole.x(ram.length()) - broken.x(ram.length());
        AxialScale.Gap gap = broken.gaps().getFirst();
        assertThat(left).isCloseTo(gap.to().minus(gap.from()).mm() - AxialScale.BREAK, within(1e-9));
        assertThat(broken.at(broken.x(Length.mm(500)))).contains(Length.mm(500));
        assertThat(broken.at(broken.x(gap.from()) + 1)).isEmpty();
    }

    @Test
    void of_aHalfSection_hasHatchingOnlyBelowTheAxis() {
        Solid bush = Solid.of((Body.Turned) SampleParts.bush().body());
        View view = SideView.of(new Look(bush, AxialScale.of(1), Cut.HALF));

        assertThat(view.marks())
                .filteredOn(mark -> mark instanceof Mark.Line line && line.style() == LineStyle.HATCH)
                .isNotEmpty()
                .allMatch(mark -> Box.of(mark).top() >= 16 - 0.001);
    }

    private static List<Mark.Line> narrow(View view) {
        return view.marks().stream()
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .filter(line -> line.style() == LineStyle.NARROW)
                .toList();
    }
}
