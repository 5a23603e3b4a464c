package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.SampleParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.svg.Svg;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class PartDrawingTest {
    @ParameterizedTest
    @MethodSource("chargehand.drawing.SampleParts#turned")
    void views_ofAPart_areTheSheetsViewsWithNothingRoundThem(Part part) {
        Picture views = PartDrawing.views(part);

        assertThat(new Box(0, 0, views.width(), views.height()).holds(Box.of(views.marks())))
                .isTrue();
        assertThat(views.width()).isLessThan(PartDrawing.of(part).width());
        assertThat(views.marks())
                .noneMatch(
                        mark -> mark instanceof Mark.Words words && words.text().equals("Drawing no."));
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.SampleParts#turned")
    void of_thePartTwice_isTheSameToTheByte(Part part) {
        assertThat(Svg.write(PartDrawing.of(part))).isEqualTo(Svg.write(PartDrawing.of(part)));
    }

    @Test
    void of_aPartWithLongWords_breaksAndShrinksThemIntoTheFrame() {
        Part spindle = SampleParts.spindle();
        String words =
                "Every surface that the packing runs on is to be left from a fine feed, never filed or papered, and "
                        + "is to be kept from the floor, the vice and the fingers until it has been looked at and greased.";
        Part part = new Part(
                words,
                "KH-101-" + words,
                "AB",
                spindle.unit(),
                words,
                words,
                spindle.general(),
                spindle.texture(),
                spindle.body(),
                List.of(),
                List.of(words, " ", words));
        Box frame = SheetSize.A4.frame().grown(0.01);

        assertThat(PartDrawing.of(part).marks()).allMatch(mark -> frame.holds(Box.of(mark)));
    }
}
