package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts what is drawn along a closed outline. Lines are cut where they cross it; a mark that does not cross it stays as it is,
 * and fills and words, which cannot be cut, go with their middle.
 */
final class Clip {
    /** Shorter pieces are dust (mm). */
    private static final double DUST = 1e-4;

    private final List<Point> outline;
    private final Box box;

    private Clip(List<Point> outline) {
        this.outline = List.copyOf(outline);
        box = Box.around(outline);
    }

    /** A clip along an outline of at least three points, the last one joined to the first. */
    static Clip along(List<Point> outline) {
        return new Clip(outline);
    }

    /** What lies within the outline. */
    List<Mark> within(List<Mark> marks) {
        return marks.stream().flatMap(mark -> kept(mark, true).stream()).toList();
    }

    /** What lies outside of it. */
    List<Mark> outside(List<Mark> marks) {
        return marks.stream().flatMap(mark -> kept(mark, false).stream()).toList();
    }

    private List<Mark> kept(Mark mark, boolean inside) {
        return switch (mark) {
            case Mark.Line line -> drawn(line, line.style(), List.of(line.from(), line.to()), inside);
            case Mark.Stroke stroke -> drawn(stroke, stroke.style(), Chords.of(stroke.path()), inside);
            case Mark.Circle circle -> {
                List<Point> round = new ArrayList<>(Chords.circle(circle.centre(), circle.radius()));
                round.add(round.getFirst());
                yield drawn(circle, circle.style(), round, inside);
            }
            case Mark.Fill fill -> whole(fill, inside);
            case Mark.Disc disc -> whole(disc, inside);
            case Mark.Words words -> whole(words, inside);
        };
    }

    private List<Mark> whole(Mark mark, boolean inside) {
        return holds(Box.of(mark).centre()) == inside ? List.of(mark) : List.of();
    }

    /** The pieces of a drawn line on one side of the outline; the mark itself where it is all on one side. */
    private List<Mark> drawn(Mark mark, LineStyle style, List<Point> line, boolean inside) {
        if (!Box.around(line).grown(DUST).overlaps(box)) {
            return inside ? List.of() : List.of(mark);
        }
        List<List<Point>> kept = pieces(line, inside);
        if (pieces(line, !inside).isEmpty()) {
            return List.of(mark);
        }
        Pencil pencil = new Pencil();
        kept.forEach(piece -> pencil.line(style, piece));
        return pencil.marks();
    }

    /** The pieces of a line from point to point that lie within the outline, or those outside. */
    List<List<Point>> pieces(List<Point> line, boolean inside) {
        List<List<Point>> pieces = new ArrayList<>();
        List<Point> piece = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            Point to = line.get(i);
            List<Double> cuts = cuts(from, to);
            for (int j = 1; j < cuts.size(); j++) {
                Point start = from.between(to, cuts.get(j - 1));
                Point end = from.between(to, cuts.get(j));
                if (start.distance(end) < DUST) {
                    continue;
                }
                if (holds(start.between(end, 0.5)) == inside) {
                    if (piece.isEmpty()) {
                        piece.add(start);
                    }
                    piece.add(end);
                } else if (!piece.isEmpty()) {
                    pieces.add(List.copyOf(piece));
                    piece.clear();
                }
            }
        }
        if (!piece.isEmpty()) {
            pieces.add(piece);
        }
        return pieces;
    }

    /** How far along a straight line the outline crosses it, in order, with 0 and 1. */
    private List<Double> cuts(Point from, Point to) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        for (int i = 0; i < outline.size(); i++) {
            Point one = outline.get(i);
            Point other = outline.get((i + 1) % outline.size());
            double turn = cross(from, to, one, other);
            if (turn != 0) {
                double here = cross(from, one, one, other) / turn;
                double there = cross(from, one, from, to) / turn;
                if (here > 0 && here < 1 && there >= 0 && there <= 1) {
                    cuts.add(here);
                }
            }
        }
        cuts.sort(null);
        return cuts;
    }

    /** The cross product of the ways from a to b and from c to d. */
    private static double cross(Point a, Point b, Point c, Point d) {
        return (b.x() - a.x()) * (d.y() - c.y()) - (b.y() - a.y()) * (d.x() - c.x());
    }

    /** Whether a point lies within the outline: a level line from it to the right crosses it an odd number of times. */
    boolean holds(Point point) {
        boolean within = false;
        for (int i = 0; i < outline.size(); i++) {
            Point one = outline.get(i);
            Point other = outline.get((i + 1) % outline.size());
            if (one.y() > point.y() != other.y() > point.y()) {
                double x = one.x() + (other.x() - one.x()) * (point.y() - one.y()) / (other.y() - one.y());
                within ^= x > point.x();
            }
        }
        return within;
    }
}
