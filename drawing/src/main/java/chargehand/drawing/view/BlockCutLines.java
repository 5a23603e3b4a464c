package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The outlines of a block with what is milled into its top: notches where a cut goes right across, hidden floors elsewhere. */
record BlockCutLines(Body.Block block, double scale, Pencil pencil) {
    private static final double INWARD = 0.01;

    /** A cut as it is seen from one side: where it begins and ends there, and whether it goes right through that way. */
    private record Seen(Length from, Length to, Length depth, boolean toEnd, boolean across, boolean nearest) {
        boolean covers(Length start, Length end) {
            return !from.isMoreThan(start) && !to.isLessThan(end);
        }
    }

    /** From above: the edges of each cut that are not edges of the block, as far as no deeper cut takes them away. */
    void plan() {
        for (BlockCut cut : block.cuts()) {
            List<Mark> edges = edges(cut);
            for (BlockCut other : block.cuts()) {
                if (other.depth().length().isMoreThan(cut.depth().length())) {
                    edges = Clip.along(within(other.area(block))).outside(edges);
                }
            }
            pencil.putAll(edges);
        }
    }

    /** The corners of an area, a little inward, so that its own edges stay. */
    private List<Point> within(BlockCut.Area area) {
        double left = size(area.left()) + INWARD;
        double right = size(area.right()) - INWARD;
        double lower = -size(area.lower()) - INWARD;
        double upper = -size(area.upper()) + INWARD;
        return List.of(
                new Point(left, lower), new Point(right, lower), new Point(right, upper), new Point(left, upper));
    }

    private List<Mark> edges(BlockCut cut) {
        BlockCut.Area area = cut.area(block);
        if (cut instanceof BlockCut.Slot slot && slot.run() instanceof BlockCut.Run.Part) {
            return List.of(new Mark.Stroke(LineStyle.WIDE, Ink.INK, roundEnded(area, slot.along())));
        }
        Pencil edges = new Pencil();
        double left = size(area.left());
        double right = size(area.right());
        double lower = -size(area.lower());
        double upper = -size(area.upper());
        Length length = block.length().length();
        Length width = block.width().length();
        edge(edges, isInside(area.left(), length), new Point(left, lower), new Point(left, upper));
        edge(edges, isInside(area.right(), length), new Point(right, lower), new Point(right, upper));
        edge(edges, isInside(area.lower(), width), new Point(left, lower), new Point(right, lower));
        edge(edges, isInside(area.upper(), width), new Point(left, upper), new Point(right, upper));
        return edges.marks();
    }

    private Path roundEnded(BlockCut.Area area, BlockCut.Way along) {
        boolean lengthwise = along == BlockCut.Way.X;
        double half = size(
                        lengthwise
                                ? area.upper().minus(area.lower())
                                : area.right().minus(area.left()))
                / 2;
        double left = size(area.left());
        double right = size(area.right());
        double lower = -size(area.lower());
        double upper = -size(area.upper());
        return lengthwise
                ? ring(
                        half,
                        new Point(left + half, upper),
                        new Point(right - half, upper),
                        new Point(right - half, lower),
                        new Point(left + half, lower))
                : ring(
                        half,
                        new Point(right, upper + half),
                        new Point(right, lower - half),
                        new Point(left, lower - half),
                        new Point(left, upper + half));
    }

    /** Two straight sides, each with a half circle after it. */
    private static Path ring(double half, Point one, Point two, Point three, Point four) {
        return new Path(
                one,
                List.of(
                        new Path.Straight(two),
                        new Path.Bend(three, half, true),
                        new Path.Straight(four),
                        new Path.Bend(one, half, true)),
                true);
    }

    private static boolean isInside(Length at, Length whole) {
        return at.isPositive() && at.isLessThan(whole);
    }

    private static void edge(Pencil edges, boolean inside, Point from, Point to) {
        if (inside) {
            edges.line(LineStyle.WIDE, from, to);
        }
    }

    /** From the front: the lower side is the near one. */
    void front() {
        Length width = block.width().length();
        side(
                block.length().length(),
                block.cuts().stream()
                        .map(cut -> {
                            BlockCut.Area area = cut.area(block);
                            return new Seen(
                                    area.left(),
                                    area.right(),
                                    cut.depth().length(),
                                    area.right().equals(block.length().length()),
                                    area.lower().isZero() && area.upper().equals(width),
                                    area.lower().isZero());
                        })
                        .toList());
    }

    /** From the left end: the front lies at the right. */
    void left() {
        Length width = block.width().length();
        Length length = block.length().length();
        side(
                width,
                block.cuts().stream()
                        .map(cut -> {
                            BlockCut.Area area = cut.area(block);
                            return new Seen(
                                    width.minus(area.upper()),
                                    width.minus(area.lower()),
                                    cut.depth().length(),
                                    area.lower().isZero(),
                                    area.left().isZero() && area.right().equals(length),
                                    area.left().isZero());
                        })
                        .toList());
    }

    private void side(Length whole, List<Seen> cuts) {
        List<Point> outline = new ArrayList<>(List.of(new Point(size(whole), 0), new Point(0, 0)));
        List<Length> places = Stream.concat(
                        Stream.of(Length.ZERO, whole), cuts.stream().flatMap(cut -> Stream.of(cut.from, cut.to)))
                .filter(at -> !at.isNegative() && !at.isMoreThan(whole))
                .distinct()
                .sorted()
                .toList();
        for (int i = 1; i < places.size(); i++) {
            Length from = places.get(i - 1);
            Length to = places.get(i);
            Length deepest = deepest(cuts, from, to);
            outline.add(new Point(size(from), height(deepest)));
            outline.add(new Point(size(to), height(deepest)));
            cuts.stream()
                    .filter(cut -> !cut.across && cut.covers(from, to) && cut.depth.isMoreThan(deepest))
                    .forEach(cut -> inner(cut, from, to, deepest));
        }
        pencil.closed(LineStyle.WIDE, outline);
    }

    /** How deep the outline lies over a stretch: only what goes right across lowers it. */
    private static Length deepest(List<Seen> cuts, Length from, Length to) {
        return cuts.stream()
                .filter(cut -> cut.across && cut.covers(from, to))
                .map(Seen::depth)
                .reduce(Length.ZERO, Length::most);
    }

    /** The floor of a cut that does not go right across, over a stretch, and its walls where they stand there. */
    private void inner(Seen cut, Length from, Length to, Length top) {
        LineStyle style = cut.nearest ? LineStyle.WIDE : LineStyle.HIDDEN;
        Point start = new Point(size(from), height(cut.depth));
        Point end = new Point(size(to), height(cut.depth));
        pencil.line(style, start, end);
        if (from.equals(cut.from) && from.isPositive()) {
            pencil.line(style, new Point(start.x(), height(top)), start);
        }
        if (to.equals(cut.to) && !cut.toEnd) {
            pencil.line(style, new Point(end.x(), height(top)), end);
        }
    }

    private double height(Length depth) {
        return -size(block.thickness().length().minus(depth));
    }

    private double size(Length length) {
        return scale * length.mm();
    }
}
