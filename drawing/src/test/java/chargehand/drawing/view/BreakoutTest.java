package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.DemoParts;
import chargehand.drawing.SampleParts;
import chargehand.drawing.Turning;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import org.junit.jupiter.api.Test;

/** Which cut a part is shown in, and what a break-out shows (drawing-office practice, ISO 128-3 from memory). */
final class BreakoutTest {
    @Test
    void of_eachKindOfPart_choosesTheCutThatShowsItBest() {
        assertThat(choice(SampleParts.spindle())).isEqualTo(Cut.NONE);
        assertThat(choice(SampleParts.pin())).isEqualTo(Cut.LOCAL);
        assertThat(choice(DemoParts.read("roller-pin"))).isEqualTo(Cut.LOCAL);
        assertThat(choice(SampleParts.bush())).isEqualTo(Cut.FULL);
        assertThat(choice(SampleParts.hub())).isEqualTo(Cut.HALF);
        assertThat(choice(SampleParts.union())).isEqualTo(Cut.HALF);
    }

    @Test
    void of_aWideBlindBore_cutsByHalfSinceTooLittleWouldBeLeft() {
        Turning t = Turning.mm("cap");
        Body.Turned cap = t.round("body", "40", "50")
                .round("flange", "60", "10")
                .drilled("bore", End.A, "30", "35")
                .body();

        assertThat(CutChoice.of(cap)).isEqualTo(Cut.HALF);
    }

    /** Walls, drill point and the hole that meets the bore, where the model has them; hatching on both sides of the bore. */
    @Test
    void of_meetingDrillings_drawsBothWhereTheyAre() {
        Look look = look(SampleParts.pin(), 1);
        View view = SideView.of(look);
        Drawn wide = Drawn.of(view.marks(), LineStyle.WIDE);
        double bore = 25.4 / 8;
        double hole = 2.375 * 25.4;

        assertThat(wide.heightsAt(20)).contains(bore, -bore);
        double shank = 0.625 * 25.4;
        assertThat(wide.passes(new Point(hole - 3 / 32.0 * 25.4, shank - 4), 1e-6))
                .as("wall of the grease outlet, down from the bore")
                .isTrue();
        double tip = 2.5 * 25.4 + bore / Math.tan(Math.toRadians(59));
        assertThat(wide.passes(new Point(tip, 0), 0.01)).as("drill point").isTrue();
        Drawn hatching = Drawn.of(view.marks(), LineStyle.HATCH);
        assertThat(hatching.lines()).anyMatch(line -> line.from().y() < -bore - 0.5);
        assertThat(hatching.lines()).anyMatch(line -> line.from().y() > bore + 0.5);
        assertThat(hatching.lines()).allMatch(line -> line.to().x() < tip + 8);
    }

    /** The outline is whole all the way along, as the model has it. */
    @Test
    void of_aBreakOut_leavesTheOutlineAsItIs() {
        Look look = look(SampleParts.pin(), 2);
        Drawn wide = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE);
        for (double at = 0.5; at < look.solid().length().mm(); at += 0.7) {
            Length here = Length.mm(at);
            double radius = look.scale().size(look.solid().outer().radiusBefore(here));
            if (wide.heightsAt(look.scale().x(here)).isEmpty()) {
                assertThat(at).as("only over the grease outlet").isCloseTo(2.375 * 25.4, within(3 / 32.0 * 25.4));
            } else {
                assertThat(wide.heightsAt(look.scale().x(here)).getLast()).isCloseTo(radius, within(0.05));
            }
        }
    }

    @Test
    void of_aBoreFromEndB_isBrokenOutThere() {
        Turning t = Turning.mm("shaft");
        Part part =
                t.round("shaft", "40", "120").drilled("hole", End.B, "8", "30").part("KH-1", "EN8");
        View view = SideView.of(look(part, 1));

        assertThat(Drawn.of(view.marks(), LineStyle.HATCH).lines())
                .isNotEmpty()
                .allMatch(line -> line.from().x() > 120 - 30 - 12);
        assertThat(Drawn.of(view.marks(), LineStyle.NARROW).lines())
                .as("the freehand line stays within the part")
                .isNotEmpty()
                .allMatch(line -> line.to().x() <= 120.01);
        assertThat(view.hatched()).isNotEmpty();
    }

    private static Cut choice(Part part) {
        return CutChoice.of((Body.Turned) part.body());
    }

    private static Look look(Part part, double scale) {
        return new Look(Solid.of((Body.Turned) part.body()), AxialScale.of(scale), choice(part));
    }
}
