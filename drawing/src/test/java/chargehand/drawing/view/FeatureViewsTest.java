package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.FeatureParts;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is cut, knurled and drilled besides turning is drawn where the part has it; ISO 2203 and ISO 128-3 from memory. */
final class FeatureViewsTest {
    private static final double EXACT = 1e-6;

    /** 24 teeth of module 3: pitch circle 72, root 72 - 2 × 1.25 × 3 = 64.5 (ISO 53). */
    @Test
    void of_aWheelCutByHalf_leavesTheTeethUnhatched() {
        List<Mark> marks = side(FeatureParts.wheel(), Cut.HALF).marks();

        assertThat(Drawn.of(marks, LineStyle.CHAIN).heightsAt(20)).contains(36.0, -36.0);
        assertThat(Drawn.of(marks, LineStyle.WIDE).heightsAt(20)).contains(39.0, -39.0, -32.25);
        assertThat(Drawn.of(marks, LineStyle.HATCH).lines())
                .allMatch(line -> line.from().y() < 32.25 + EXACT && line.to().y() < 32.25 + EXACT);
    }

    @Test
    void of_aWheelSeenFromOutside_showsNoRootLine() {
        List<Mark> marks = side(FeatureParts.pinion(), Cut.NONE).marks();
        double pitch = 14 / 6.0 * 25.4 / 2;

        assertThat(Drawn.of(marks, LineStyle.CHAIN).heightsAt(50)).anyMatch(height -> Math.abs(height - pitch) < 1e-4);
        assertThat(Drawn.of(marks, LineStyle.WIDE).heightsAt(50)).hasSize(2);
    }

    /** Bore 25 and keyway 3.3 deep: the floor lies 15.8 from the axis, 8 wide. */
    @Test
    void of_aKeyedBore_putsTheFloorWhereItIsInBothViews() {
        Look look = look(FeatureParts.wheel(), Cut.HALF, 2);
        Drawn side = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE);
        Drawn end = Drawn.of(EndView.of(look, End.B).marks(), LineStyle.WIDE);

        assertThat(side.heightsAt(2 * 20)).anyMatch(height -> Math.abs(height + 2 * 15.8) < EXACT);
        assertThat(end.passes(new Point(0, 2 * 15.8), EXACT)).isTrue();
        assertThat(end.passes(new Point(2 * 4, 2 * 14), EXACT)).as("its side").isTrue();
        assertThat(end.passes(new Point(0, 2 * 12.5), 0.2))
                .as("the bore is open there")
                .isFalse();
    }

    @Test
    void of_holesOnACircle_showsEachInTheEndViewAndOneInTheSection() {
        Look look = look(FeatureParts.flange(), Cut.HALF, 1);
        List<Mark.Circle> holes = EndView.of(look, End.A).marks().stream()
                .filter(Mark.Circle.class::isInstance)
                .map(Mark.Circle.class::cast)
                .filter(circle -> circle.style() == LineStyle.WIDE && circle.radius() == 5.5)
                .toList();

        assertThat(holes).hasSize(6).allMatch(hole -> Math.abs(hole.centre().distance(new Point(0, 0)) - 42.5) < EXACT);
        List<Double> walls = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE).heightsAt(7);
        assertThat(walls).contains(-42.5 - 5.5, -42.5 + 5.5);
    }

    /** A blind tapped hole: full thread 14 deep, then room for the tap, then the point of the drill. */
    @Test
    void of_tappedHolesInAFace_endsThreadBeforeHole() {
        List<Mark> marks = side(FeatureParts.flange(), Cut.HALF).marks();
        Drawn wide = Drawn.of(marks, LineStyle.WIDE);
        double minor = (8 - 1.0825 * 1.25) / 2;

        assertThat(wide.passes(new Point(44 - 14, 22.5), EXACT))
                .as("end of full thread")
                .isTrue();
        assertThat(wide.heightsAt(28)).anyMatch(height -> Math.abs(height + 22.5 + minor) < 0.02);
        double tip = 44 - 14 - 5 * 1.25 - minor / Math.tan(Math.toRadians(59));
        assertThat(wide.passes(new Point(tip, 22.5), 0.05))
                .as("point of the drill")
                .isTrue();
    }

    /** 14 over the flat on 16: the flat lies 6 from the axis, 2 √(64 − 36) wide. */
    @Test
    void of_flats_crossesTheOneInFrontAndLowersTheOutlineAtTheOther() {
        List<Mark> marks = side(FeatureParts.flatted(), Cut.NONE).marks();
        double half = Math.sqrt(64 - 36);

        assertThat(Drawn.of(marks, LineStyle.NARROW).lines()).hasSize(2);
        assertThat(Drawn.of(marks, LineStyle.WIDE).heightsAt(80)).anyMatch(height -> Math.abs(height - half) < EXACT);
        assertThat(Drawn.of(marks, LineStyle.WIDE).heightsAt(27).getFirst()).isCloseTo(-8, within(EXACT));
    }

    @Test
    void of_aFlat_cutsTheCircleInTheEndView() {
        Drawn end = Drawn.of(
                EndView.of(look(FeatureParts.flatted(), Cut.NONE, 1), End.A).marks(), LineStyle.WIDE);

        assertThat(end.passes(new Point(0, 8), EXACT)).isTrue();
        assertThat(end.passes(new Point(0, 10), 0.5)).isFalse();
        assertThat(end.passes(new Point(0, -10), 0.05)).isTrue();
    }

    @Test
    void of_aKnurl_patternsAPartOfItWithinItsOutline() {
        List<Segment> pattern =
                Drawn.of(side(FeatureParts.knurled(), Cut.NONE).marks(), LineStyle.NARROW).lines().stream()
                        .filter(line -> line.to().x() <= 16 + EXACT)
                        .toList();

        assertThat(pattern)
                .hasSizeGreaterThan(20)
                .allMatch(line -> Math.abs(line.from().y()) <= 15 + EXACT);
        assertThat(pattern).allMatch(line -> line.from().x() >= 16 * 0.6 - 0.5);
    }

    @Test
    void of_aPartThatComesBack_drawsWhatIsThereInDashesAndDots() {
        List<Mark> marks = side(FeatureParts.altered(), Cut.NONE).marks();
        Drawn wide = Drawn.of(marks, LineStyle.WIDE);
        Drawn quiet = Drawn.of(marks, LineStyle.DOUBLE_CHAIN);

        assertThat(wide.heightsAt(30)).as("bearing").isEmpty();
        assertThat(quiet.heightsAt(30)).contains(20.0, -20.0);
        assertThat(quiet.heightsAt(68)).contains(27.5, -27.5);
        assertThat(wide.heightsAt(85)).as("seat").contains(19.0, -19.0);
        assertThat(wide.passes(new Point(75, 24), EXACT)).as("the new shoulder").isTrue();
        assertThat(quiet.passes(new Point(20, 3), 0.05)).as("the old hole").isTrue();
    }

    /** A slot 4 wide and 4 deep across the end of a plug 35 long. */
    @Test
    void of_aSlotAcrossAnEnd_isANotchAndTwoChords() {
        Look look = look(FeatureParts.slotted(), Cut.NONE, 1);
        Drawn side = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE);
        Drawn end = Drawn.of(EndView.of(look, End.B).marks(), LineStyle.WIDE);

        assertThat(side.passes(new Point(31, 0), EXACT)).as("floor").isTrue();
        assertThat(side.passes(new Point(33, 2), EXACT)).as("side").isTrue();
        assertThat(side.passes(new Point(35, 0), 1.9)).as("the face is open").isFalse();
        assertThat(end.passes(new Point(0, 2), EXACT)).isTrue();
        assertThat(end.passes(new Point(0, -2), EXACT)).isTrue();
    }

    /** A slit 2 wide through one wall of a bush 40 outside and 25 inside. */
    @Test
    void of_aSlit_opensTheRingInTheEndView() {
        Look look = look(FeatureParts.split(), Cut.HALF, 1);
        Drawn end = Drawn.of(EndView.of(look, End.A).marks(), LineStyle.WIDE);

        assertThat(end.passes(new Point(0, 20), 0.5)).isFalse();
        assertThat(end.passes(new Point(0, 12.5), 0.5)).isFalse();
        assertThat(end.passes(new Point(1, 16), EXACT)).isTrue();
        assertThat(end.passes(new Point(0, -20), 0.05))
                .as("the other wall is whole")
                .isTrue();
    }

    /** M8 full thread 14 deep, drilled 5 pitches deeper; from the left its hole 38 from the front lies 12 from the back. */
    @Test
    void of_aBlockWithHolesBehindEachOther_needsTheViewFromTheLeft() {
        Body.Block block = (Body.Block) FeatureParts.block().body();
        Drawn left = Drawn.of(BlockView.left(block, 1).marks(), LineStyle.HIDDEN);
        double minor = (8 - 1.0825 * 1.25) / 2;

        assertThat(BlockView.needsLeft(block)).isTrue();
        assertThat(left.passes(new Point(12 + minor, -20), 0.02)).as("wall").isTrue();
        assertThat(left.passes(new Point(12, -30 + 14), EXACT))
                .as("end of full thread")
                .isTrue();
        assertThat(left.passes(new Point(12, -30 + 14 + 5 * 1.25), EXACT))
                .as("floor of the drilled hole")
                .isTrue();
        assertThat(BlockView.needsLeft(new Body.Block(
                        block.length(),
                        block.width(),
                        block.thickness(),
                        block.holes().subList(1, 3))))
                .isFalse();
    }

    /** Half a ball of radius 15 and a swelling of radius 100 over 50: the sagitta is 100 − √(100² − 25²). */
    @Test
    void of_curvedSections_followTheirArcs() {
        Drawn wide = Drawn.of(side(FeatureParts.curved(), Cut.NONE).marks(), LineStyle.WIDE);

        assertThat(wide.heightsAt(7).getLast()).isCloseTo(Math.sqrt(15 * 15 - 8 * 8), within(0.05));
        assertThat(wide.heightsAt(48).getLast()).isCloseTo(7 + 100 - Math.sqrt(100 * 100 - 25 * 25), within(0.05));
    }

    /** A slot 8 deep right across a block 30 thick, and a hole from its floor. */
    @Test
    void of_aBlockWithASlot_startsItsHoleAtTheFloor() {
        Body.Block block = (Body.Block) FeatureParts.slottedBlock().body();
        Drawn hidden = Drawn.of(BlockView.front(block, 1).marks(), LineStyle.HIDDEN);
        Drawn left = Drawn.of(BlockView.left(block, 1).marks(), LineStyle.WIDE);

        assertThat(hidden.passes(new Point(36, -21), EXACT))
                .as("wall of the hole")
                .isTrue();
        assertThat(hidden.passes(new Point(36, -25), 1))
                .as("nothing in the slot")
                .isFalse();
        assertThat(left.heightsAt(25))
                .as("the notch from the left")
                .contains(22.0)
                .doesNotContain(30.0);
        assertThat(left.heightsAt(10)).as("beside it, and the step").contains(30.0, 20.0);
    }

    private static View side(Part part, Cut cut) {
        return SideView.of(look(part, cut, 1));
    }

    private static Look look(Part part, Cut cut, double scale) {
        return Look.of((Body.Turned) part.body(), AxialScale.of(scale), cut);
    }
}
