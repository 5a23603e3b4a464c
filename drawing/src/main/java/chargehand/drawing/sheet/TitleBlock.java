package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.ProjectionSymbol;
import chargehand.drawing.sign.TextureSign;
import chargehand.measure.LengthUnit;
import chargehand.part.DrawingIssue;
import chargehand.part.Part;
import java.util.List;

/** The title block, {@value #WIDTH} mm wide: the fields of ISO 7200 and what a shop needs besides. */
final class TitleBlock {
    static final double WIDTH = 180;
    static final double HEIGHT = 48;

    private static final Lettering CAPTION = Lettering.height(1.8);
    private static final Lettering VALUE = Lettering.height(3.5);
    private static final Lettering SMALL = Lettering.height(2.5);
    private static final Lettering TITLE = Lettering.height(5).semiBold();

    private final Canvas canvas;
    private final Part part;
    private final Heading heading;

    private TitleBlock(Canvas canvas, Part part, Heading heading) {
        this.canvas = canvas;
        this.part = part;
        this.heading = heading;
    }

    /** Draws the block with its lower right corner at a point. */
    static void draw(Canvas canvas, Point corner, Part part, Heading heading, DrawingScale scale) {
        new TitleBlock(canvas, part, heading).draw(corner.moved(-WIDTH, -HEIGHT), scale);
    }

    /**
     * One cell of a row.
     *
     * @param caption what it holds
     * @param width (mm)
     * @param lettering of the value
     */
    private record Cell(String caption, double width, Lettering lettering, String value) {}

    private static Cell cell(String caption, double width, String value) {
        return new Cell(caption, width, VALUE, value);
    }

    private void draw(Point corner, DrawingScale scale) {
        Point row = row(
                corner,
                10,
                List.of(
                        new Cell("Title", 110, TITLE, part.title()),
                        new Cell("Drawing no.", 50, TITLE, part.drawing()),
                        new Cell("Issue", 20, TITLE, part.issue())));
        row = row(
                row,
                8,
                List.of(
                        cell("For", 110, heading.customer().isBlank() ? part.duty() : heading.customer()),
                        cell("Scale", 25, scale.text()),
                        cell("", 25, ""),
                        cell("Sheet", 20, "1 of 1")));
        Local symbol = Local.at(corner.moved(110 + 25 + 3.5, 10 + 4));
        canvas.putAll(ProjectionSymbol.marks(symbol, 3, part.drafting().projection()));
        row = row(
                row,
                8,
                List.of(
                        cell("Material", 70, part.material()),
                        cell("Stock", 60, heading.stock()),
                        cell("Job", 50, heading.job())));
        row = row(
                row,
                8,
                List.of(
                        cell("Drawn", 45, drawn()),
                        cell("Checked", 45, ""),
                        cell("Approved", 45, ""),
                        cell("Date", 45, date())));
        row = row(
                row,
                8,
                List.of(
                        cell("General tolerance", 70, part.general().text()),
                        cell("Units", 30, part.unit() == LengthUnit.INCH ? "inches" : "mm"),
                        cell("Texture", 30, ""),
                        new Cell("Edges", 50, SMALL, "take burrs off, break edges")));
        texture(corner.moved(100, 10 + 8 + 8 + 8));
        row(
                row,
                6,
                List.of(
                        cell("", 60, heading.owner()),
                        new Cell("", 24, SMALL, "Part drawing"),
                        new Cell("", 38, SMALL, "DO NOT SCALE \u2013 ASK"),
                        cell("", 58, "")));
        CheckBar.draw(canvas, row.moved(60 + 24 + 38 + (58 - CheckBar.LENGTH) / 2, 4.6));
        canvas.box(LineStyle.WIDE, corner, WIDTH, HEIGHT);
    }

    private void texture(Point corner) {
        Local foot = Local.at(corner.moved(12, 7.6));
        part.texture().ifPresent(texture -> {
            double ra = texture.ra();
            String value = ra == Math.rint(ra) ? Long.toString(Math.round(ra)) : Double.toString(ra);
            canvas.putAll(TextureSign.marks(foot, "Ra " + value, 2.2));
        });
    }

    private Point row(Point corner, double height, List<Cell> cells) {
        double x = corner.x();
        for (Cell cell : cells) {
            canvas.box(LineStyle.NARROW, new Point(x, corner.y()), cell.width, height);
            canvas.words(CAPTION, new Point(x + 1, corner.y() + 2.5), cell.caption);
            Lines.fitted(
                    canvas, cell.lettering, new Point(x + 1.5, corner.y() + height - 1.25), cell.width - 3, cell.value);
            x += cell.width;
        }
        return corner.moved(0, height);
    }

    private String drawn() {
        List<DrawingIssue> issues = part.drafting().issues();
        return heading.drawn().isBlank() && !issues.isEmpty()
                ? issues.getFirst().by()
                : heading.drawn();
    }

    private String date() {
        List<DrawingIssue> issues = part.drafting().issues();
        return heading.date().isBlank() && !issues.isEmpty()
                ? issues.getLast().date().toString()
                : heading.date();
    }
}
