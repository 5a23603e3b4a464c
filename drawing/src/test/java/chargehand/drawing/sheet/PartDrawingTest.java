package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.DemoParts;
import chargehand.drawing.RandomParts;
import chargehand.drawing.SampleParts;
import chargehand.drawing.dimension.Placing;
import chargehand.drawing.dimension.SizeText;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import chargehand.drawing.svg.Svg;
import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every drawing, after ISO 129-1 as our drawing rules put it: nothing on anything, arrows on lines. */
final class PartDrawingTest {
    /** A round outline is judged by its chords, which lie this far within it at most (mm). */
    private static final double ON_LINE = 0.1;

    /** A plain size, perhaps in brackets, as a diameter, a radius or over flats. */
    private static final Pattern SIZE = Pattern.compile("[(ØR□]*((?:\\d+ )?\\d+/\\d+|\\d*\\.?\\d+)\\)?(?: A/F)?");

    private static final double LEAST_LETTERS = 2.49;

    /** Words of one size may touch: they are set side by side (mm). */
    private static final double TOUCHING = 0.01;

    /** How many parts made up by chance are drawn besides. */
    private static final int BY_CHANCE = 24;

    private static final List<Drawn> DRAWINGS = Stream.concat(
                    DemoParts.andSamples().stream(), RandomParts.of(BY_CHANCE).stream())
            .map(PartDrawingTest::drawn)
            .toList();

    /** A part, how it was laid out, and its sheet. */
    record Drawn(Part part, Fitting fitting, Picture sheet) {
        @Override
        public String toString() {
            return part.title() + " " + part.drawing();
        }
    }

    private static Drawn drawn(Part part) {
        Fitting fitting = Fitting.of(part);
        return new Drawn(part, fitting, PartDrawing.sheet(part, Heading.BLANK, fitting));
    }

    static List<Drawn> drawings() {
        return DRAWINGS;
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_keepsEverythingWithinTheFrame(Drawn drawn) {
        Box frame = drawn.fitting.sheet().frame().grown(0.01);

        assertThat(drawn.sheet.marks())
                .allSatisfy(mark -> assertThat(frame.holds(Box.of(mark)))
                        .as(mark.toString())
                        .isTrue());
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_hasNoWordsOnWords(Drawn drawn) {
        List<Lettered> words = drawn.sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> new Lettered(((Mark.Words) mark).text(), Box.of(mark)))
                .toList();
        for (int i = 0; i < words.size(); i++) {
            Lettered one = words.get(i);
            assertThat(words.subList(i + 1, words.size()))
                    .as(one.text)
                    .noneMatch(other -> one.box.grown(-TOUCHING).overlaps(other.box));
        }
    }

    /** Words and the room they take. */
    private record Lettered(String text, Box box) {}

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_putsEveryArrowOnALine(Drawn drawn) {
        for (Layout.Placed view : drawn.fitting.views()) {
            for (Placing placing : view.view().placed()) {
                List<Segment> lines = Stream.concat(
                                placing.lines().stream()
                                        .filter(line -> line.kind() == Placing.Kind.EXTENSION)
                                        .map(Placing.Stroke::segment),
                                view.view().view().outlines().stream())
                        .toList();
                for (Point tip : tips(placing)) {
                    assertThat(lines)
                            .as("arrow of %s at %s", placing.says(), tip)
                            .anyMatch(line -> line.distance(tip) < ON_LINE);
                }
            }
        }
    }

    /** The marks of cutting planes point along the axis at nothing. */
    private static List<Point> tips(Placing placing) {
        return placing.says().matches("([K-Z]) \\1") ? List.of() : placing.tips();
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_writesNoSizeTooSmallToRead(Drawn drawn) {
        for (Layout.Placed view : drawn.fitting.views()) {
            assertThat(view.view().marks())
                    .filteredOn(Mark.Words.class::isInstance)
                    .allMatch(mark -> ((Mark.Words) mark).lettering().capitals() >= LEAST_LETTERS);
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_printsNoSizeThatIsNotThePartsOwn(Drawn drawn) {
        Set<Length> own = new PartLengths(drawn.part).all();
        LengthUnit unit = drawn.part.unit();
        for (Placing placing : placed(drawn)) {
            Matcher size = SIZE.matcher(placing.says());
            if (size.matches()) {
                assertThat(own)
                        .as(placing.says())
                        .contains(LengthReader.read(size.group(1), unit).length());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void of_anyPart_givesEveryDiameterOnce(Drawn drawn) {
        List<String> said = placed(drawn).stream().map(Placing::says).toList();
        SizeText text = new SizeText(drawn.part.unit());
        Map<String, Long> wanted = new PartLengths(drawn.part)
                .cylinders().stream()
                        .map(size -> text.diameter(size).toString())
                        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));

        wanted.forEach((diameter, times) -> assertThat(
                        said.stream().filter(diameter::equals).count())
                .as(diameter)
                .isGreaterThanOrEqualTo(times));
    }

    private static List<Placing> placed(Drawn drawn) {
        return drawn.fitting.views().stream()
                .flatMap(view -> view.view().placed().stream())
                .toList();
    }

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
