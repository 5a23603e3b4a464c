package chargehand.drawing.sheet;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.picture.ScaledSheet.Role;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/** Draws a part on a sheet: views, sizes, notes, title block. The same part always gives the same sheet. */
public final class PartDrawing {
    /** Clear paper round views that stand alone (mm). */
    private static final double MARGIN = 3;

    private PartDrawing() {}

    /** The drawing of a part, with blanks in the title block for what the part does not say. */
    public static Picture of(Part part) {
        return of(part, Heading.BLANK);
    }

    /** The drawing of a part. */
    public static Picture of(Part part, Heading heading) {
        return sheet(part, heading).picture();
    }

    /** The drawing of a part with what its layout knows. */
    public static DrawnSheet sheet(Part part, Heading heading) {
        return sheet(part, heading, Fitting.of(part));
    }

    /** The drawing of a part with what is needed to take it at full size. */
    public static ScaledSheet toScale(Part part, Heading heading) {
        return toScale(part, heading, Fitting.of(part));
    }

    /** The views of a part with their sizes alone, as large as they are: for a page that says the rest itself. */
    public static Picture views(Part part) {
        Fitting fitting = Fitting.of(part);
        Box bounds = Layout.bounds(fitting.views()).grown(MARGIN);
        Canvas canvas = new Canvas();
        fitting.views()
                .forEach(view ->
                        canvas.putAll(view.moved(-bounds.left(), -bounds.top()).marks()));
        return canvas.picture(bounds.width(), bounds.height(), title(part));
    }

    static DrawnSheet sheet(Part part, Heading heading, Fitting fitting) {
        Box frame = fitting.sheet().frame();
        return new DrawnSheet(
                part,
                toScale(part, heading, fitting).picture(),
                frame,
                titleBlock(frame),
                centred(fitting),
                fitting.notes().said());
    }

    private static ScaledSheet toScale(Part part, Heading heading, Fitting fitting) {
        List<ScaledSheet.Group> groups = new ArrayList<>();
        List<DrawnView> views = centred(fitting);
        groups.add(new ScaledSheet.Group(Role.SHEET, surround(part, heading, fitting)));
        views.forEach(view -> groups.addAll(view.groups()));
        groups.add(new ScaledSheet.Group(Role.SHEET, notes(fitting)));
        SheetSize size = fitting.sheet();
        return new ScaledSheet(
                size.width(),
                size.height(),
                title(part),
                fitting.scale().factor(),
                part.unit(),
                new Point(views.getFirst().x(), views.getFirst().y()),
                groups,
                FullSizeRemarks.of(fitting));
    }

    private static List<Mark> surround(Part part, Heading heading, Fitting fitting) {
        Canvas canvas = new Canvas();
        Box frame = fitting.sheet().frame();
        canvas.box(LineStyle.FRAME, new Point(frame.left(), frame.top()), frame.width(), frame.height());
        TitleBlock.draw(canvas, new Point(frame.right(), frame.bottom()), part, heading, fitting.scale());
        return canvas.marks();
    }

    private static List<Mark> notes(Fitting fitting) {
        Canvas canvas = new Canvas();
        Box frame = fitting.sheet().frame();
        Point corner = new Point(frame.right() - TitleBlock.WIDTH + 2, frame.bottom() - TitleBlock.HEIGHT - 4);
        fitting.notes().draw(canvas, corner);
        return canvas.marks();
    }

    private static Box titleBlock(Box frame) {
        return new Box(
                frame.right() - TitleBlock.WIDTH, frame.bottom() - TitleBlock.HEIGHT, frame.right(), frame.bottom());
    }

    private static String title(Part part) {
        return part.drawing().isBlank() ? part.title() : part.title() + ", drawing " + part.drawing();
    }

    /** The views in the middle of their room. */
    private static List<DrawnView> centred(Fitting fitting) {
        Point middle = Layout.bounds(fitting.views()).centre();
        Point room = fitting.room().centre();
        return fitting.views().stream()
                .map(view -> view.moved(room.x() - middle.x(), room.y() - middle.y()))
                .toList();
    }
}
