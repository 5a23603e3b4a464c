package chargehand.drawing.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The signs of ISO 6411 and ISO 2553, both from memory of the standards. */
final class SignsTest {
    private static final double HEIGHT = 3.5;
    private static final Point FACE = new Point(100, 50);

    @Test
    void centreThatMustStay_isAnOpenVeeOfSixtyDegreesOnTheFace() {
        List<Mark> marks = CentreHoleSign.MUST_STAY.marks(FACE, 1, HEIGHT);

        assertThat(marks).hasSize(2).allMatch(mark -> ((Mark.Line) mark).from().equals(FACE));
        Box box = Box.of(marks);
        assertThat(box.left()).isCloseTo(100, within(1e-9));
        assertThat(box.height() / box.width() / 2).isCloseTo(Math.tan(Math.toRadians(30)), within(1e-9));
    }

    @Test
    void centreThatMustNotStay_hasABarClearOfTheFace() {
        List<Mark> marks = CentreHoleSign.MUST_NOT_STAY.marks(FACE, -1, HEIGHT);

        assertThat(marks).hasSize(3);
        assertThat(Box.of(marks).right()).isCloseTo(100 - 0.4 * HEIGHT, within(1e-9));
        assertThat(marks).anyMatch(mark -> Box.of(mark).width() == 0);
    }

    @Test
    void centreThatMayStay_hasNoSign() {
        assertThat(CentreHoleSign.MAY_STAY.marks(FACE, 1, HEIGHT)).isEmpty();
        assertThat(CentreHoleSign.MAY_STAY.reach(HEIGHT)).isZero();
    }

    /** System A: one continuous and one dashed reference line; a weld on the arrow's side stands on the continuous one. */
    @ParameterizedTest
    @EnumSource(WeldSign.Shape.class)
    void weldOnTheArrowsSide_standsOnTheContinuousLineWithADashedOneBelow(WeldSign.Shape shape) {
        WeldSign sign = new WeldSign(shape, "z5", "", false, true, HEIGHT);
        List<Mark> marks = sign.marks(Local.at(FACE));
        Mark.Line dashed = line(marks, LineStyle.HIDDEN);
        Mark.Line whole = line(marks, LineStyle.NARROW);

        assertThat(whole.from().y()).isCloseTo(whole.to().y(), within(1e-9));
        assertThat(dashed.from().y()).isGreaterThan(whole.from().y());
        assertThat(marks)
                .filteredOn(mark -> mark instanceof Mark.Stroke)
                .isNotEmpty()
                .allMatch(mark -> Box.of(mark).bottom() <= whole.from().y() + 1e-9);
    }

    @Test
    void weldAllRound_hasItsCircleAtTheBendOfTheLeaderWhicheverWayThatComes() {
        WeldSign sign = new WeldSign(WeldSign.Shape.SINGLE_V, "6", "135", true, true, HEIGHT);

        assertThat(circle(sign.reached(true)).centre().x()).isLessThan(FACE.x());
        assertThat(circle(sign.reached(false)).centre().x()).isGreaterThan(FACE.x() + sign.width());
        assertThat(sign.reached(false).width()).isEqualTo(sign.width());
    }

    /** The fillet's upright leg stands at the left, whichever side the leader comes from. */
    @Test
    void fillet_hasItsUprightAtTheLeft() {
        Label sign = new WeldSign(WeldSign.Shape.FILLET, "", "", false, true, HEIGHT).reached(false);
        Mark.Stroke fillet = (Mark.Stroke) sign.marks(Local.at(FACE)).stream()
                .filter(Mark.Stroke.class::isInstance)
                .findFirst()
                .orElseThrow();

        assertThat(fillet.path().start().x())
                .isEqualTo(fillet.path().runs().getFirst().to().x());
        assertThat(fillet.path().runs().getLast().to().x())
                .isGreaterThan(fillet.path().start().x());
    }

    private static Mark.Circle circle(Label sign) {
        return (Mark.Circle) sign.marks(Local.at(FACE)).stream()
                .filter(Mark.Circle.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    private static Mark.Line line(List<Mark> marks, LineStyle style) {
        return marks.stream()
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .filter(line -> line.style() == style)
                .findFirst()
                .orElseThrow();
    }
}
