package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.SampleParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import org.junit.jupiter.api.Test;

final class DetailTest {
    /** The undercut of the worked example: 3 wide from 25 on, Ø16 between Ø20 and Ø25. */
    private static final Detail UNDERCUT = detail();

    private static Detail detail() {
        Solid spindle = Solid.of((Body.Turned) SampleParts.spindle().body());
        Look look = new Look(spindle, AxialScale.of(0.5), Cut.NONE);
        return new Detail(look, Side.ABOVE, new Station(Length.mm(26.5), Length.mm(9)), Length.mm(5), 5);
    }

    @Test
    void view_ofAnUndercut_showsItAtItsOwnScale() {
        Drawn wide = Drawn.of(UNDERCUT.view().marks(), LineStyle.WIDE);

        assertThat(wide.heightsAt(26 * 5.0)).containsExactly(8 * 5.0);
        assertThat(wide.heightsAt(24 * 5.0)).containsExactly(10 * 5.0);
        assertThat(wide.passes(new Point(25 * 5.0, -9 * 5.0), 1e-6)).isTrue();
    }

    @Test
    void view_ofAnyPlace_endsAtItsCircle() {
        Point middle = UNDERCUT.place();

        assertThat(UNDERCUT.radius()).isCloseTo(25, within(1e-9));
        assertThat(UNDERCUT.view().marks()).allSatisfy(mark -> {
            Box box = Box.of(mark);
            assertThat(middle.distance(box.centre())).isLessThanOrEqualTo(25.01);
        });
    }

    @Test
    void ring_inTheWholeView_standsRoundThePlace() {
        assertThat(UNDERCUT.ring()).isEqualTo(new Mark.Circle(LineStyle.NARROW, Ink.INK, new Point(13.25, -4.5), 2.5));
    }
}
