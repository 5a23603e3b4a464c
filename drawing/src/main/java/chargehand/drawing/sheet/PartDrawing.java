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
        return sheet(part, Fitting.of(part, heading));
    }

    /** The drawing of a part with what is needed to take it at full size. */
    public static ScaledSheet toScale(Part part, Heading heading) {
        return toScale(part, Fitting.of(part, heading));
    }

    /** The views of a part with their sizes alone, as large as they are: for a page that says the rest itself. */
    public static Picture views(Part part) {
        return seen(part).picture();
    }

    /** The same, with where the lengths stand in it that people may have otherwise. */
    public static SeenLengths seen(Part part) {
        Fitting fitting = Fitting.of(part);
        Box bounds = Layout.bounds(fitting.views()).grown(MARGIN);
        List<DrawnView> views = fitting.views().stream()
                .map(view -> view.moved(-bounds.left(), -bounds.top()))
                .toList();
        Canvas canvas = new Canvas();
        views.forEach(view -> canvas.putAll(view.marks()));
        return SeenLengths.of(part, canvas.picture(bounds.width(), bounds.height(), title(part)), views);
    }

    static DrawnSheet sheet(Part part, Fitting fitting) {
        Box frame = fitting.sheet().frame();
        return new DrawnSheet(
                part,
                toScale(part, fitting).picture(),
                frame,
                fitting.foot().block(frame),
                centred(fitting),
                fitting.foot().notes().said());
    }

    private static ScaledSheet toScale(Part part, Fitting fitting) {
        List<ScaledSheet.Group> groups = new ArrayList<>();
        List<DrawnView> views = centred(fitting);
        groups.add(new ScaledSheet.Group(Role.SHEET, surround(fitting)));
        views.forEach(view -> groups.addAll(view.groups()));
        groups.add(new ScaledSheet.Group(
                Role.SHEET, fitting.foot().noteMarks(fitting.sheet().frame())));
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

    private static List<Mark> surround(Fitting fitting) {
        Canvas canvas = new Canvas();
        Box frame = fitting.sheet().frame();
        canvas.box(LineStyle.FRAME, new Point(frame.left(), frame.top()), frame.width(), frame.height());
        return canvas.putAll(fitting.foot().marks(frame, fitting.scale())).marks();
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
