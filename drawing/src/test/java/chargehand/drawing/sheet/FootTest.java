package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.DemoParts;
import chargehand.drawing.checking.FaultKind;
import chargehand.drawing.checking.SheetCheck;
import chargehand.drawing.checking.SheetFault;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.part.Drafting;
import chargehand.part.DrawingIssue;
import chargehand.part.Part;
import chargehand.part.Projection;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands round the views: title block, table of issues, check bar, code, notes. */
final class FootTest {
    /** Symbols that are drawn, so that every form of the drawing shows the same ones. */
    private static final String DRAWN = "[Ø⌀□◇△▽▷◁←→↑↓↧⌴⌵⌒⌓∅√⌖◎↗]";

    /** The narrowest line that a copy of a copy keeps (mm): the least width of ISO 128-2 but one. */
    private static final double NARROWEST = 0.18;

    private static Part issued(Part part, int issues) {
        List<DrawingIssue> table = IntStream.range(0, issues)
                .mapToObj(i -> new DrawingIssue(
                        Character.toString('A' + i),
                        i == 1 ? "Ø of the shank made smaller, since the new bush is thicker all round" : "change " + i,
                        LocalDate.of(2026, 1, 1).plusDays(i),
                        "J.V.",
                        Optional.empty()))
                .toList();
        return with(
                part,
                issues == 0 ? part.issue() : table.getLast().letter(),
                part.notes(),
                new Drafting(Projection.FIRST_ANGLE, table));
    }

    private static Part with(Part part, String issue, List<String> notes, Drafting drafting) {
        return new Part(
                part.title(),
                part.drawing(),
                issue,
                part.unit(),
                part.material(),
                part.duty(),
                part.general(),
                part.texture(),
                part.body(),
                part.ties(),
                notes,
                drafting);
    }

    /** Words that cannot be read for what else lies there, and whatever leaves the frame. */
    private static List<SheetFault> inTheWay(DrawnSheet sheet) {
        Set<FaultKind> kinds = EnumSet.of(
                FaultKind.WORDS_ON_WORDS,
                FaultKind.WORDS_ON_LINES,
                FaultKind.WORDS_ON_OUTLINE,
                FaultKind.OUTSIDE_FRAME,
                FaultKind.SMALL_WORDS);
        return SheetCheck.of(sheet).stream()
                .filter(fault -> kinds.contains(fault.kind()))
                .toList();
    }

    private static List<String> words(Picture sheet) {
        return sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    private static double down(Picture sheet, String text) {
        return sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Words words && words.text().equals(text))
                .mapToDouble(mark -> ((Mark.Words) mark).at().y())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void of_aDemoPart_hasABarOf50Millimetres(String name) {
        Picture sheet = PartDrawing.of(DemoParts.read(name));

        assertThat(sheet.marks())
                .anyMatch(mark -> mark instanceof Mark.Line line
                        && line.style() == LineStyle.SYMBOL
                        && line.from().y() == line.to().y()
                        && Math.abs(line.from().distance(line.to()) - 50) < 1e-9);
        assertThat(words(sheet)).contains("Print at 100 %: this bar is 50 mm", "DO NOT SCALE – ASK");
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void of_aDemoPart_writesNoSymbolAsALetter(String name) {
        assertThat(words(PartDrawing.of(DemoParts.read(name)))).noneMatch(text -> text.matches(".*" + DRAWN + ".*"));
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void of_aDemoPart_isBlackOnWhiteWithNoLineTooNarrowToCopy(String name) {
        for (Mark mark : PartDrawing.of(DemoParts.read(name)).marks()) {
            switch (mark) {
                case Mark.Line line -> copies(line.style(), line.ink());
                case Mark.Stroke stroke -> copies(stroke.style(), stroke.ink());
                case Mark.Circle circle -> copies(circle.style(), circle.ink());
                case Mark.Fill fill -> assertThat(fill.ink()).isIn(Ink.INK, Ink.PAPER);
                case Mark.Disc disc -> assertThat(disc.ink()).isEqualTo(Ink.INK);
                case Mark.Words words -> assertThat(words.ink()).isEqualTo(Ink.INK);
            }
        }
    }

    private static void copies(LineStyle style, Ink ink) {
        assertThat(style.width()).isGreaterThanOrEqualTo(NARROWEST);
        assertThat(ink).isEqualTo(Ink.INK);
    }

    @Test
    void of_aPartWithIssues_tellsThemUpwardFromTheTitleBlock() {
        Picture sheet = PartDrawing.of(issued(DemoParts.read("gland-stud"), 3));

        assertThat(words(sheet)).contains("change 0", "change 2", "2026-01-01", "2026-01-03");
        assertThat(down(sheet, "change 2")).isLessThan(down(sheet, "change 0"));
        assertThat(words(sheet).stream().filter("2026-01-03"::equals)).hasSize(2);
    }

    @Test
    void of_aPartWithManyIssues_tellsTheLastSixAndNamesTheOthers() {
        Picture sheet = PartDrawing.of(issued(DemoParts.read("gland-stud"), 9));

        assertThat(words(sheet))
                .contains("change 8", "change 3", "Earlier issues: A, B, C.")
                .doesNotContain("change 2");
    }

    @Test
    void of_aPartWithIssues_keepsItsViewsClearOfThem() {
        for (int issues : new int[] {1, 4, 8}) {
            DrawnSheet sheet = PartDrawing.sheet(issued(DemoParts.read("union"), issues), Heading.BLANK);

            assertThat(sheet.views()).allMatch(view -> !Box.of(view.marks()).overlaps(sheet.titleBlock()));
            assertThat(inTheWay(sheet)).isEmpty();
        }
    }

    @Test
    void of_anIssueThatChangedAFeature_putsItsLetterThereInATriangle() {
        Part part = DemoParts.read("bearing-bush");
        LocalDate day = LocalDate.of(2026, 4, 17);
        Drafting drafting = new Drafting(
                Projection.FIRST_ANGLE,
                List.of(
                        new DrawingIssue("X", "press fit", day, "J.V.", Optional.of("outside")),
                        new DrawingIssue("Y", "press fit again", day, "J.V.", Optional.of("outside")),
                        new DrawingIssue("Z", "grease room", day, "J.V.", Optional.of("bore"))));
        DrawnSheet sheet = PartDrawing.sheet(with(part, "Z", part.notes(), drafting), Heading.BLANK);

        assertThat(lettersInTriangles(sheet)).containsExactlyInAnyOrder("Y", "Z");
        assertThat(inTheWay(sheet)).isEmpty();
    }

    private static List<String> lettersInTriangles(DrawnSheet sheet) {
        List<Mark> marks =
                sheet.views().stream().flatMap(view -> view.marks().stream()).toList();
        List<Box> triangles = marks.stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke
                        && stroke.path().closed()
                        && stroke.path().runs().size() == 2)
                .map(Box::of)
                .toList();
        return marks.stream()
                .filter(mark ->
                        mark instanceof Mark.Words && triangles.stream().anyMatch(box -> box.holds(Box.of(mark))))
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    @Test
    void of_aJob_putsItsCodeClearOfNotesAndViews() {
        Picture code =
                new Canvas().fill(Ink.INK, Path.box(Point.of(4, 4), 20, 20)).picture(28, 28, "Code");
        Heading heading = new Heading("Kelderhaven", "Job 214", "Crane", "", "", "", Optional.empty()).with(code);
        Part part = DemoParts.read("bearing-bush");
        DrawnSheet sheet = PartDrawing.sheet(part, heading);
        Mark square = sheet.picture().marks().stream()
                .filter(mark ->
                        mark instanceof Mark.Fill && Math.abs(Box.of(mark).width() - 20) < 1e-9)
                .findFirst()
                .orElseThrow();
        Box quiet = Box.of(square).grown(4);

        assertThat(quiet.right()).isCloseTo(sheet.frame().right(), within(1e-9));
        assertThat(sheet.picture().marks())
                .filteredOn(mark -> !mark.equals(square) && !(mark instanceof Mark.Stroke))
                .noneMatch(mark -> Box.of(mark).overlaps(quiet.grown(-0.01)));
        assertThat(words(sheet.picture())).contains("Job 214", "Kelderhaven", "Crane");
    }

    @Test
    void of_aNoteWithADiameter_drawsTheSign() {
        Part part = DemoParts.read("gland-stud");
        Part noted = with(part, part.issue(), List.of("Ø.625 to be plated, □1/2 to be left."), part.drafting());
        DrawnSheet sheet = PartDrawing.sheet(noted, Heading.BLANK);

        assertThat(words(sheet.picture())).contains(".625 to be plated,", "1/2 to be left.");
        assertThat(sheet.notes()).contains("Ø.625 to be plated, □1/2 to be left.");
        assertThat(inTheWay(sheet)).isEmpty();
    }
}
