package chargehand.drawing.checking;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.SampleParts;
import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.dimension.Placing;
import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sheet.DrawnSheet;
import chargehand.drawing.sheet.DrawnView;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.drawing.sign.Arrow;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The check must find each kind of fault in a picture made wrong on purpose, and none in one that is right. */
final class SheetCheckTest {
    private static final Box FRAME = new Box(0, 0, 100, 100);
    private static final Box TITLE_BLOCK = new Box(60, 90, 100, 100);
    private static final Lettering LETTERS = Lettering.height(3.5);

    private static List<FaultKind> kinds(Canvas canvas) {
        return SheetCheck.ofPicture(canvas.picture(100, 100, "made wrong"), FRAME, TITLE_BLOCK).stream()
                .map(SheetFault::kind)
                .distinct()
                .toList();
    }

    /** A level length between two extension lines with its arrows and words. */
    private static Canvas length(Canvas canvas, double from, double to, double y, double top) {
        Point left = Point.of(from, y);
        Point right = Point.of(to, y);
        return canvas.line(LineStyle.NARROW, Point.of(from, top), Point.of(from, y + 2))
                .line(LineStyle.NARROW, Point.of(to, top), Point.of(to, y + 2))
                .line(LineStyle.NARROW, left, right)
                .put(Arrow.at(left, 180))
                .put(Arrow.at(right, 0));
    }

    /** A leader from a point up to the right, on an edge that it points at. */
    private static Canvas leader(Canvas canvas, Point tip, double angle) {
        return canvas.line(LineStyle.WIDE, tip.moved(-3, 0), tip.moved(3, 0))
                .line(LineStyle.NARROW, tip, tip.towards(angle, 20))
                .put(Arrow.at(tip, angle + 180));
    }

    @Test
    void ofPicture_ofALengthDrawnWell_findsNothing() {
        assertThat(kinds(length(new Canvas(), 20, 60, 50, 30).words(LETTERS, Point.of(38, 49), "40")))
                .isEmpty();
    }

    @Test
    void ofPicture_ofWordsOnWords_findsThem() {
        Canvas canvas = new Canvas().words(LETTERS, Point.of(20, 20), "Ø25").words(LETTERS, Point.of(25, 22), "40");
        assertThat(kinds(canvas)).containsExactly(FaultKind.WORDS_ON_WORDS);
    }

    @Test
    void ofPicture_ofWordsOnAnEdge_findsThem() {
        Canvas canvas = new Canvas()
                .words(LETTERS, Point.of(20, 20), "40")
                .line(LineStyle.WIDE, Point.of(10, 18), Point.of(50, 18));
        assertThat(kinds(canvas)).containsExactly(FaultKind.WORDS_ON_OUTLINE);
    }

    @Test
    void ofPicture_ofAnEdgeClearedAway_findsIt() {
        Canvas canvas = new Canvas()
                .line(LineStyle.WIDE, Point.of(10, 18), Point.of(50, 18))
                .fill(Ink.PAPER, Path.box(Point.of(20, 15), 10, 6));
        assertThat(kinds(canvas)).containsExactly(FaultKind.WORDS_ON_OUTLINE);
    }

    @Test
    void ofPicture_ofWordsOnHatching_findsThemUnlessPaperIsCleared() {
        Canvas bare = new Canvas()
                .line(LineStyle.HATCH, Point.of(10, 10), Point.of(40, 40))
                .words(LETTERS, Point.of(20, 24), "40");
        Canvas cleared = new Canvas()
                .line(LineStyle.HATCH, Point.of(10, 10), Point.of(40, 40))
                .fill(Ink.PAPER, Path.box(Point.of(19, 19), 12, 7))
                .words(LETTERS, Point.of(20, 24), "40");
        assertThat(kinds(bare)).containsExactly(FaultKind.WORDS_ON_LINES);
        assertThat(kinds(cleared)).isEmpty();
    }

    @Test
    void ofPicture_ofDimensionLinesThatCross_findsThem() {
        Canvas canvas = length(new Canvas(), 20, 60, 50, 30);
        Point high = Point.of(40, 40);
        Point low = Point.of(40, 70);
        canvas.line(LineStyle.NARROW, Point.of(30, 40), Point.of(42, 40))
                .line(LineStyle.NARROW, Point.of(30, 70), Point.of(42, 70))
                .line(LineStyle.NARROW, high, low)
                .put(Arrow.at(high, 90))
                .put(Arrow.at(low, 270));
        assertThat(kinds(canvas)).contains(FaultKind.DIMENSION_LINES_CROSS);
    }

    @Test
    void ofPicture_ofDimensionLinesOnEachOther_findsThem() {
        Canvas canvas = length(length(new Canvas(), 20, 60, 50, 30), 40, 80, 50, 30);
        assertThat(kinds(canvas)).contains(FaultKind.DIMENSION_LINES_CROSS);
    }

    @Test
    void ofPicture_ofALengthThroughAnother_findsTheExtensionLine() {
        Canvas canvas = length(length(new Canvas(), 20, 60, 50, 30), 40, 80, 58, 30);
        assertThat(kinds(canvas)).containsExactly(FaultKind.DIMENSION_LINE_CROSSED);
    }

    @Test
    void ofPicture_ofLeadersThatCross_findsThem() {
        Canvas canvas = leader(leader(new Canvas(), Point.of(20, 60), 60), Point.of(30, 60), 120);
        assertThat(kinds(canvas)).containsExactly(FaultKind.LEADERS_CROSS);
    }

    @Test
    void ofPicture_ofALeaderOverAnExtensionLine_countsIt() {
        Canvas canvas = leader(length(new Canvas(), 20, 60, 50, 30), Point.of(17, 48), 75);
        assertThat(kinds(canvas)).containsExactly(FaultKind.EXTENSIONS_CROSS);
        assertThat(FaultKind.EXTENSIONS_CROSS.isOnlyCounted()).isTrue();
    }

    @Test
    void ofPicture_ofSomethingOverTheFrame_findsIt() {
        Canvas canvas = new Canvas().line(LineStyle.WIDE, Point.of(50, 50), Point.of(100.5, 50));
        assertThat(kinds(canvas)).containsExactly(FaultKind.OUTSIDE_FRAME);
    }

    @Test
    void ofPicture_ofAnArrowShortOfItsLine_findsIt() {
        Canvas canvas = new Canvas()
                .line(LineStyle.NARROW, Point.of(60.02, 30), Point.of(60.02, 52))
                .line(LineStyle.NARROW, Point.of(20, 50), Point.of(60, 50))
                .put(Arrow.at(Point.of(60, 50), 0));
        assertThat(kinds(canvas)).containsExactly(FaultKind.ARROW_OFF_LINE);
    }

    @Test
    void ofPicture_ofAnArrowWithoutALineBehindIt_findsIt() {
        Canvas canvas = new Canvas()
                .line(LineStyle.WIDE, Point.of(60, 30), Point.of(60, 52))
                .put(Arrow.at(Point.of(60, 50), 0));
        assertThat(kinds(canvas)).containsExactly(FaultKind.ARROW_OFF_LINE);
    }

    @Test
    void ofPicture_ofSmallWordsAndHeavyLines_findsThem() {
        Canvas canvas = new Canvas()
                .words(Lettering.height(1.8), Point.of(20, 20), "40")
                .words(Lettering.height(1.8), Point.of(62, 95), "Title")
                .line(LineStyle.HEAVY, Point.of(20, 30), Point.of(40, 30));
        assertThat(kinds(canvas)).containsExactly(FaultKind.SMALL_WORDS, FaultKind.ODD_WIDTH);
    }

    private static final DrawnSheet SPINDLE = PartDrawing.sheet(SampleParts.spindle(), Heading.BLANK);

    /** The spindle's sheet with every size of its side view changed. */
    private static List<FaultKind> kinds(UnaryOperator<List<Placing>> change) {
        DrawnView side = SPINDLE.views().getFirst();
        var changed = new Dimensioned(
                side.view().view(),
                change.apply(side.view().placed()),
                side.view().notes());
        List<DrawnView> views = new ArrayList<>(SPINDLE.views());
        views.set(0, new DrawnView(changed, side.shows(), side.scale(), side.x(), side.y()));
        return SheetCheck.of(new DrawnSheet(
                        SPINDLE.part(),
                        SPINDLE.picture(),
                        SPINDLE.frame(),
                        SPINDLE.titleBlock(),
                        views,
                        SPINDLE.notes()))
                .stream()
                .map(SheetFault::kind)
                .filter(kind -> !kind.isOnlyCounted())
                .distinct()
                .toList();
    }

    private static Placing saying(List<Placing> placed, String text) {
        return placed.stream()
                .filter(placing -> placing.says().equals(text))
                .findFirst()
                .orElseThrow();
    }

    private static UnaryOperator<List<Placing>> without(String text) {
        return placed ->
                placed.stream().filter(placing -> !placing.says().equals(text)).toList();
    }

    private static UnaryOperator<List<Placing>> reworded(String from, String to) {
        return placed -> placed.stream()
                .map(placing -> placing.says().equals(from) ? reworded(placing, to) : placing)
                .toList();
    }

    private static Placing reworded(Placing placing, String to) {
        Placing.Lettered first = placing.labels().getFirst();
        var label = new Placing.Lettered(new Inscription(Wording.size(to), 3.5), first.frame());
        return new Placing(
                List.of(label),
                placing.signs(),
                placing.texts(),
                placing.lines(),
                placing.arrows(),
                placing.extent(),
                placing.cost());
    }

    @Test
    void of_theSheetAsItIs_findsNothing() {
        assertThat(kinds(placed -> placed)).isEmpty();
    }

    @Test
    void of_aFigureThatIsNoneOfThePartsSizes_findsIt() {
        assertThat(kinds(reworded("Ø50", "Ø51"))).contains(FaultKind.NOT_THE_PARTS);
        assertThat(kinds(reworded("2 × 45°", "2 × 30°"))).containsExactly(FaultKind.NOT_THE_PARTS);
    }

    @Test
    void of_limitsThatAreNotTheParts_findsThem() {
        assertThat(kinds(reworded("Ø25 h7 25.000/24.979", "Ø25 +0.021/0"))).containsExactly(FaultKind.NOT_THE_PARTS);
    }

    @Test
    void of_aLengthThatReadsLikeAnother_findsIt() {
        assertThat(kinds(reworded("30", "12"))).contains(FaultKind.NOT_TO_SCALE);
    }

    @Test
    void of_aLengthLeftOut_findsIt() {
        assertThat(kinds(without("40"))).containsExactly(FaultKind.SIZE_MISSING);
        assertThat(kinds(without("Ø16"))).containsExactly(FaultKind.SIZE_MISSING);
        assertThat(kinds(without("M24"))).containsExactly(FaultKind.SIZE_MISSING);
    }

    @Test
    void of_aLengthGivenTwice_findsIt() {
        assertThat(kinds(placed -> twice(placed, "40"))).containsExactly(FaultKind.SIZE_TWICE);
        assertThat(kinds(placed -> twice(placed, "Ø50"))).containsExactly(FaultKind.SIZE_TWICE);
    }

    private static List<Placing> twice(List<Placing> placed, String text) {
        List<Placing> more = new ArrayList<>(placed);
        more.add(saying(placed, text));
        return more;
    }
}
