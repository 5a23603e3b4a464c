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
import java.util.stream.Collectors;

/**
 * One way to put one size on the drawing.
 *
 * @param labels its words
 * @param signs what is drawn of it besides lines, arrows and words
 * @param texts the boxes that its words cover
 * @param lines its lines, by kind
 * @param arrows its arrows
 * @param extent the box that holds its lines and words
 * @param cost how little this way is liked in itself
 */
public record Placing(
        List<Lettered> labels,
        List<Mark> signs,
        List<Box> texts,
        List<Stroke> lines,
        List<Pointed> arrows,
        Box extent,
        double cost) {
    /** The height of all words at sizes (mm): ISO 3098, and readable at the machine. */
    static final double HEIGHT = 3.5;

    public Placing {
        labels = List.copyOf(labels);
        signs = List.copyOf(signs);
        texts = List.copyOf(texts);
        lines = List.copyOf(lines);
        arrows = List.copyOf(arrows);
    }

    /** What a line at a size is for. */
    public enum Kind {
        DIMENSION,
        EXTENSION,
        LEADER
    }

    /** A line and what it is for. */
    public record Stroke(Kind kind, Segment segment) {}

    /** A label and the frame at whose origin it begins. */
    public record Lettered(Label label, Local frame) {}

    /** An arrow: where its tip is, and which way it points (degrees). */
    public record Pointed(Point tip, double direction) {}

    /** Its words as one would type them. */
    public String says() {
        return labels.stream().map(lettered -> lettered.label.toString()).collect(Collectors.joining(" "));
    }

    /** Where its arrows touch. */
    public List<Point> tips() {
        return arrows.stream().map(Pointed::tip).toList();
    }

    /** Half the width of an arrow and a little air (mm). */
    private static final double HALF_ARROW = 0.7;

    /** Whether one of its arrows or rings lies in a box. */
    boolean marks(Box box) {
        Box near = box.grown(HALF_ARROW);
        for (int i = 0; i < arrows.size(); i++) {
            Pointed arrow = arrows.get(i);
            if (new Segment(arrow.tip, arrow.tip.towards(arrow.direction, -Arrow.LENGTH)).meets(near)) {
                return true;
            }
        }
        for (int i = 0; i < signs.size(); i++) {
            if (signs.get(i) instanceof Mark.Circle ring && box.meets(ring.centre(), ring.radius())) {
                return true;
            }
        }
        return false;
    }

    /** The same with the tip of its leader, which is its first line, at a point near by. */
    Placing tipAt(Point tip) {
        List<Stroke> moved = new ArrayList<>(lines);
        moved.set(
                0,
                new Stroke(
                        Kind.LEADER, new Segment(tip, lines.getFirst().segment.to())));
        Pointed arrow = new Pointed(tip, arrows.getFirst().direction);
        return new Placing(labels, signs, texts, moved, List.of(arrow), extent, cost);
    }

    /** What is drawn. */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Stroke line : lines) {
            Segment segment = line.segment;
            marks.add(new Mark.Line(LineStyle.NARROW, Ink.INK, segment.from(), segment.to()));
        }
        arrows.forEach(arrow -> marks.add(Arrow.at(arrow.tip, arrow.direction)));
        marks.addAll(signs);
        labels.forEach(lettered -> marks.addAll(lettered.label.marks(lettered.frame)));
        return marks;
    }

    static Pen pen() {
        return new Pen();
    }

    /** Puts a placing together. */
    static final class Pen {
        private final List<Lettered> labels = new ArrayList<>();
        private final List<Mark> signs = new ArrayList<>();
        private final List<Box> texts = new ArrayList<>();
        private final List<Stroke> lines = new ArrayList<>();
        private final List<Pointed> arrows = new ArrayList<>();

        Pen line(Kind kind, Point from, Point to) {
            lines.add(new Stroke(kind, new Segment(from, to)));
            return this;
        }

        Pen arrow(Point tip, double direction) {
            arrows.add(new Pointed(tip, direction));
            return this;
        }

        /** A label that begins at a frame's origin. */
        Pen label(Label label, Local frame) {
            labels.add(new Lettered(label, frame));
            texts.add(label.box(frame));
            return this;
        }

        /** A box that no words may share. */
        Pen covers(Box box) {
            texts.add(box);
            return this;
        }

        Pen sign(Mark mark) {
            signs.add(mark);
            return this;
        }

        Placing at(double cost) {
            Box extent = null;
            for (Box text : texts) {
                extent = extent == null ? text : extent.with(text);
            }
            for (Stroke line : lines) {
                Box box = line.segment.box();
                extent = extent == null ? box : extent.with(box);
            }
            if (extent == null) {
                throw new IllegalStateException("a size has words or lines");
            }
            return new Placing(labels, signs, texts, lines, arrows, extent, cost);
        }
    }
}
