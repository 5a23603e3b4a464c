package chargehand.drawing.checking;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is to be seen on a finished picture: lines, words, arrows, cleared paper, each with its place in the order of drawing.
 */
final class Ground {
    /** Letters that sink below the base line. */
    private static final String SINKING = "gjpqyQ,;()";

    private static final double SINKS = 0.25;

    private final List<Line> lines = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final List<Head> heads = new ArrayList<>();
    private final List<Cleared> cleared = new ArrayList<>();

    Ground(Picture picture) {
        int order = 0;
        for (Mark mark : picture.marks()) {
            add(mark, order++);
        }
    }

    /** A line as it is drawn. */
    record Line(LineStyle style, Trace trace, int order) {
        boolean meets(Box box) {
            return trace.pieces().stream().anyMatch(piece -> piece.meets(box));
        }

        /** Whether it is a plain narrow line from one point to another. */
        boolean isNarrowAndStraight() {
            return style == LineStyle.NARROW && trace instanceof Trace.Straight;
        }

        boolean isEdge() {
            return style == LineStyle.WIDE || style == LineStyle.HIDDEN;
        }
    }

    /** Words and the paper they cover. */
    record Words(String text, Box box, Lettering lettering, int order) {}

    /** A filled arrow: where it points, and the middle of its blunt side. */
    record Head(Point tip, Point heel) {
        Box box() {
            return Box.around(List.of(tip, heel)).grown(0.1);
        }
    }

    /** A box of clear paper over what was drawn before. */
    record Cleared(Box box, int order) {}

    List<Line> lines() {
        return lines;
    }

    List<Words> words() {
        return words;
    }

    List<Head> heads() {
        return heads;
    }

    List<Cleared> cleared() {
        return cleared;
    }

    private void add(Mark mark, int order) {
        switch (mark) {
            case Mark.Line(var style, var ink, Point from, Point to) ->
                lines.add(new Line(style, new Trace.Straight(new Segment(from, to)), order));
            case Mark.Stroke(var style, var ink, Path path) ->
                Trace.of(path).forEach(trace -> lines.add(new Line(style, trace, order)));
            case Mark.Circle(var style, var ink, Point centre, double radius) ->
                lines.add(new Line(style, Trace.circle(centre, radius), order));
            case Mark.Fill(Ink ink, Path path) -> addFill(ink, path, order);
            case Mark.Disc disc -> {}
            case Mark.Words one -> words.add(new Words(one.text(), box(one), one.lettering(), order));
        }
    }

    private void addFill(Ink ink, Path path, int order) {
        List<Point> corners = corners(path);
        if (ink == Ink.PAPER && corners.size() == 4) {
            cleared.add(new Cleared(Box.around(corners), order));
        } else if (ink == Ink.INK && corners.size() == 3) {
            addHead(corners);
        }
    }

    private static List<Point> corners(Path path) {
        List<Point> corners = new ArrayList<>(List.of(path.start()));
        path.runs().forEach(run -> corners.add(run.to()));
        return corners;
    }

    /** An arrow is a slim triangle, three times as long as it is wide or so. */
    private void addHead(List<Point> corners) {
        Point tip = corners.stream()
                .max(Comparator.comparingDouble(
                        corner -> corners.stream().mapToDouble(corner::distance).sum()))
                .orElseThrow();
        List<Point> back =
                corners.stream().filter(corner -> !corner.equals(tip)).toList();
        Point heel = back.getFirst().between(back.getLast(), 0.5);
        double slim = tip.distance(heel) / back.getFirst().distance(back.getLast());
        if (slim > 2.5 && tip.distance(heel) > 3) {
            heads.add(new Head(tip, heel));
        }
    }

    /** The paper under words, as far down as their letters go. */
    private static Box box(Mark.Words words) {
        Lettering lettering = words.lettering();
        double width = lettering.width(words.text());
        double back = switch (words.align()) {
            case LEFT -> 0;
            case MIDDLE -> width / 2;
            case RIGHT -> width;
        };
        boolean sinks = words.text().codePoints().anyMatch(letter -> SINKING.indexOf(letter) >= 0);
        double low = sinks ? -SINKS * lettering.capitals() : 0;
        Point start = words.at().towards(words.turned(), -back);
        Point end = start.towards(words.turned(), width);
        double up = words.turned() + 90;
        return Box.around(List.of(
                start.towards(up, low),
                end.towards(up, low),
                start.towards(up, lettering.capitals()),
                end.towards(up, lettering.capitals())));
    }
}
