package chargehand.drawing.pdf;

import static chargehand.drawing.pdf.Pdf.POINTS_PER_MM;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Palette;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Draws marks into a page's content, in points from the lower left corner. */
final class PdfMarks {
    private static final int ROUND_JOIN = 1;

    private final PDPageContentStream content;
    private final Fonts fonts;
    private final Palette palette;
    private final double height;

    PdfMarks(PDPageContentStream content, Fonts fonts, Palette palette, double height) throws IOException {
        this.content = content;
        this.fonts = fonts;
        this.palette = palette;
        this.height = height;
        content.setLineJoinStyle(ROUND_JOIN);
    }

    void add(Mark mark) throws IOException {
        switch (mark) {
            case Mark.Line(LineStyle style, Ink ink, Point from, Point to) ->
                stroke(style, ink, Path.through(List.of(from, to)));
            case Mark.Stroke(LineStyle style, Ink ink, Path path) -> stroke(style, ink, path);
            case Mark.Fill(Ink ink, Path path) -> fill(ink, path);
            case Mark.Circle(LineStyle style, Ink ink, Point centre, double radius) ->
                stroke(style, ink, circle(centre, radius));
            case Mark.Disc(Ink ink, Point centre, double radius) -> fill(ink, circle(centre, radius));
            case Mark.Words words -> words(words);
        }
    }

    private void stroke(LineStyle style, Ink ink, Path path) throws IOException {
        List<Double> dashes = path.closed() ? style.dashesRound(path.length()) : style.dashes(path.length());
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = (float) (dashes.get(i) * POINTS_PER_MM);
        }
        content.setLineDashPattern(pattern, 0);
        content.setLineWidth((float) (style.width() * POINTS_PER_MM));
        content.setStrokingColor(red(ink), green(ink), blue(ink));
        trace(path);
        content.stroke();
    }

    private void fill(Ink ink, Path path) throws IOException {
        content.setNonStrokingColor(red(ink), green(ink), blue(ink));
        trace(path);
        content.fill();
    }

    private static Path circle(Point centre, double radius) {
        Point left = centre.moved(-radius, 0);
        Path.Run over = new Path.Bend(centre.moved(radius, 0), radius, true);
        return new Path(left, List.of(over, new Path.Bend(left, radius, true)), true);
    }

    private void trace(Path path) throws IOException {
        content.moveTo(x(path.start()), y(path.start()));
        Point from = path.start();
        for (Path.Run run : path.runs()) {
            switch (run) {
                case Path.Straight(Point to) -> content.lineTo(x(to), y(to));
                case Path.Bend bend -> bend(from, bend);
            }
            from = run.to();
        }
        if (path.closed()) {
            content.closePath();
        }
    }

    private void bend(Point from, Path.Bend bend) throws IOException {
        for (Curve curve : Curve.of(from, bend)) {
            content.curveTo(
                    x(curve.leave()),
                    y(curve.leave()),
                    x(curve.arrive()),
                    y(curve.arrive()),
                    x(curve.to()),
                    y(curve.to()));
        }
    }

    private void words(Mark.Words words) throws IOException {
        Lettering lettering = words.lettering();
        String text = lettering.shown(words.text());
        double back = switch (words.align()) {
            case LEFT -> 0;
            case MIDDLE -> lettering.width(text) / 2;
            case RIGHT -> lettering.width(text);
        };
        Point start = words.at().towards(words.turned(), -back);
        content.setNonStrokingColor(red(words.ink()), green(words.ink()), blue(words.ink()));
        content.beginText();
        content.setFont(fonts.of(lettering.weight()), (float) (lettering.size() * POINTS_PER_MM));
        content.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(words.turned()), x(start), y(start)));
        content.showText(text);
        content.endText();
    }

    private float red(Ink ink) {
        return part(ink, 16);
    }

    private float green(Ink ink) {
        return part(ink, 8);
    }

    private float blue(Ink ink) {
        return part(ink, 0);
    }

    /** Eight bits of the colour from the given bit, as a part of full brightness. */
    private float part(Ink ink, int bit) {
        return (palette.colour(ink) >> bit & 0xff) / 255f;
    }

    private float x(Point point) {
        return (float) (point.x() * POINTS_PER_MM);
    }

    private float y(Point point) {
        return (float) ((height - point.y()) * POINTS_PER_MM);
    }
}
