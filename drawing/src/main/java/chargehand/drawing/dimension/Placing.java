package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import chargehand.drawing.sign.Arrow;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Local;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One way to put one size on the drawing.
 *
 * @param marks what is drawn
 * @param texts the boxes its words cover
 * @param lines its lines, by kind
 * @param tips where its arrows touch
 * @param extent the box that holds its lines and words
 * @param cost how little this way is liked in itself
 */
public record Placing(
        List<Mark> marks, List<Box> texts, List<Stroke> lines, List<Point> tips, Box extent, double cost) {
    /** The height of all words at sizes (mm): ISO 3098, and readable at the machine. */
    static final double HEIGHT = 3.5;

    public Placing {
        marks = List.copyOf(marks);
        texts = List.copyOf(texts);
        lines = List.copyOf(lines);
        tips = List.copyOf(tips);
    }

    /** What a line at a size is for. */
    public enum Kind {
        DIMENSION,
        EXTENSION,
        LEADER
    }

    /** A line and what it is for. */
    public record Stroke(Kind kind, Segment segment) {}

    static Pen pen() {
        return new Pen();
    }

    /** Puts a placing together. */
    static final class Pen {
        private final List<Mark> marks = new ArrayList<>();
        private final List<Box> texts = new ArrayList<>();
        private final List<Stroke> lines = new ArrayList<>();
        private final List<Point> tips = new ArrayList<>();

        Pen line(Kind kind, Point from, Point to) {
            marks.add(new Mark.Line(LineStyle.NARROW, Ink.INK, from, to));
            lines.add(new Stroke(kind, new Segment(from, to)));
            return this;
        }

        Pen arrow(Point tip, double direction) {
            marks.add(Arrow.at(tip, direction));
            tips.add(tip);
            return this;
        }

        /** A label that begins at a frame's origin. */
        Pen label(Label label, Local frame) {
            marks.addAll(label.marks(frame));
            texts.add(label.box(frame));
            return this;
        }

        /** A box that no words may share. */
        Pen covers(Box box) {
            texts.add(box);
            return this;
        }

        Pen mark(Mark mark) {
            marks.add(mark);
            return this;
        }

        Placing at(double cost) {
            Box extent = Stream.concat(
                            texts.stream(),
                            lines.stream()
                                    .map(line -> Box.around(List.of(
                                            line.segment().from(),
                                            line.segment().to()))))
                    .reduce(Box::with)
                    .orElseThrow();
            return new Placing(marks, texts, lines, tips, extent, cost);
        }
    }
}
