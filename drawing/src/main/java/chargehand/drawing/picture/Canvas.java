package chargehand.drawing.picture;

import chargehand.drawing.lettering.Lettering;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Where marks are put down, one on top of the other, until they make a {@link Picture}. Everything is in millimetres. */
public final class Canvas {
    private final List<Mark> marks = new ArrayList<>();

    public Canvas line(LineStyle style, Point from, Point to) {
        return put(new Mark.Line(style, Ink.INK, from, to));
    }

    public Canvas stroke(LineStyle style, Path path) {
        return put(new Mark.Stroke(style, Ink.INK, path));
    }

    public Canvas circle(LineStyle style, Point centre, double radius) {
        return put(new Mark.Circle(style, Ink.INK, centre, radius));
    }

    public Canvas fill(Ink ink, Path path) {
        return put(new Mark.Fill(ink, path));
    }

    /** An upright box, its upper left corner given. */
    public Canvas box(LineStyle style, Point corner, double width, double height) {
        return stroke(style, Path.box(corner, width, height));
    }

    /** Words from a point on their base line to the right. */
    public Canvas words(Lettering lettering, Point at, String text) {
        return words(lettering, at, Mark.Align.LEFT, text);
    }

    /** Words upright at a point on their base line; none where the text is blank. */
    public Canvas words(Lettering lettering, Point at, Mark.Align align, String text) {
        return text.isBlank() ? this : put(new Mark.Words(Ink.INK, lettering, at, align, 0, text));
    }

    /**
     * Words in as many lines as they need within a width, the first base line at {@code at}.
     *
     * @return the base line after the last line (mm down), where the next words may stand
     */
    public double paragraph(Lettering lettering, Point at, double width, String text) {
        double y = at.y();
        for (String line : lettering.wrap(text, width)) {
            words(lettering, new Point(at.x(), y), line);
            y += lettering.linePitch();
        }
        return y;
    }

    /** Another picture with its upper left corner at a point. */
    public Canvas place(Picture picture, Point corner) {
        picture.marks().forEach(mark -> put(mark.moved(corner.x(), corner.y())));
        return this;
    }

    public Canvas put(Mark mark) {
        marks.add(mark);
        return this;
    }

    public Canvas putAll(Collection<? extends Mark> more) {
        marks.addAll(more);
        return this;
    }

    /** What has been put down so far, in order. */
    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** The picture of what has been put down so far. */
    public Picture picture(double width, double height, String title) {
        return new Picture(width, height, title, marks);
    }
}
