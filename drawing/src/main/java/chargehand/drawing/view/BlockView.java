package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.Size;
import chargehand.part.shape.ToolRoom;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The views of a block: from the front (length by thickness), from above (length by width) and from the left. Each has its origin at the
 * lower left corner of the block.
 */
public final class BlockView {
    private static final double OVERRUN = 2;
    /** What is left below the point of a drill (mm on paper). */
    private static final double LEFT = 1;

    private static final double POINT = 1 / Math.tan(Math.toRadians(59));

    private final Body.Block block;
    private final double scale;
    private final Pencil pencil = new Pencil();

    private BlockView(Body.Block block, double scale) {
        this.block = block;
        this.scale = scale;
    }

    /** Seen from above. */
    public static View plan(Body.Block block, double scale) {
        BlockView view = new BlockView(block, scale);
        view.outline(block.length().length(), block.width().length());
        block.holes().forEach(view::round);
        new BlockCutLines(block, scale, view.pencil).plan();
        return View.of(view.pencil.marks());
    }

    /** Seen from the front, its holes hidden. */
    public static View front(Body.Block block, double scale) {
        BlockView view = new BlockView(block, scale);
        if (block.cuts().isEmpty()) {
            view.outline(block.length().length(), block.thickness().length());
        } else {
            new BlockCutLines(block, scale, view.pencil).front();
        }
        block.holes().forEach(hole -> view.hidden(hole, hole.x().length()));
        return View.of(view.pencil.marks());
    }

    /** Seen from the left end, its holes hidden; the front lies at the right. */
    public static View left(Body.Block block, double scale) {
        BlockView view = new BlockView(block, scale);
        Length width = block.width().length();
        if (block.cuts().isEmpty()) {
            view.outline(width, block.thickness().length());
        } else {
            new BlockCutLines(block, scale, view.pencil).left();
        }
        block.holes().forEach(hole -> view.hidden(hole, width.minus(hole.y().length())));
        return View.of(view.pencil.marks());
    }

    /** Whether a view from the left tells apart what the front view lays over each other: unlike holes, one behind another. */
    public static boolean needsLeft(Body.Block block) {
        List<Hole> holes = block.holes();
        return !block.cuts().isEmpty()
                || IntStream.range(0, holes.size())
                        .anyMatch(i ->
                                IntStream.range(i + 1, holes.size()).anyMatch(j -> hides(holes.get(i), holes.get(j))));
    }

    private static boolean hides(Hole one, Hole other) {
        boolean alike = bore(one).equals(bore(other))
                && thread(one).equals(thread(other))
                && depth(one).equals(depth(other))
                && one.x().length().equals(other.x().length());
        return !alike && overlap(one, other, one.x(), other.x()) && !overlap(one, other, one.y(), other.y());
    }

    private static Optional<Length> depth(Hole hole) {
        return switch (hole.depth()) {
            case Depth.Through() -> Optional.empty();
            case Depth.Blind(var depth) -> Optional.of(depth.length());
        };
    }

    private static boolean overlap(Hole one, Hole other, Size at, Size otherAt) {
        return at.length()
                .minus(otherAt.length())
                .abs()
                .isLessThan(bore(one).plus(bore(other)).half());
    }

    /** The diameter of a hole where it is plain: the minor diameter of a tapped one. */
    public static Length bore(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> drilled.diameter().length();
            case Hole.Reamed reamed -> reamed.diameter().length();
            case Hole.Tapped tapped -> tapped.thread().minorInternal();
            case Hole.Counterbored bored -> bored.diameter().length();
        };
    }

    private static Optional<ScrewThread> thread(Hole hole) {
        return hole instanceof Hole.Tapped tapped ? Optional.of(tapped.thread()) : Optional.empty();
    }

    private void outline(Length width, Length height) {
        pencil.put(new Mark.Stroke(
                LineStyle.WIDE, Ink.INK, Path.box(new Point(0, -size(height)), size(width), size(height))));
    }

    private double size(Length length) {
        return scale * length.mm();
    }

    private void round(Hole hole) {
        Point centre = new Point(size(hole.x().length()), -size(hole.y().length()));
        double radius = size(bore(hole)) / 2;
        pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, centre, radius));
        double reach = radius + OVERRUN;
        if (hole instanceof Hole.Counterbored bored
                && bored.headDepth().length().isMoreThan(cutAway(hole))) {
            double head = size(bored.head().length()) / 2;
            pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, centre, head));
            reach = head + OVERRUN;
        }
        if (thread(hole).isPresent()) {
            double root = radius
                    + Math.max(
                            ThreadLines.LEAST, size(thread(hole).orElseThrow().depth()));
            pencil.put(threeQuarters(centre, root));
            reach = root + OVERRUN;
        }
        pencil.line(LineStyle.CHAIN, centre.moved(-reach, 0), centre.moved(reach, 0));
        pencil.line(LineStyle.CHAIN, centre.moved(0, -reach), centre.moved(0, reach));
    }

    /** The root of a thread seen end on, its gap at the upper right. */
    static Mark threeQuarters(Point centre, double radius) {
        Path path = new Path(
                centre.towards(95, radius),
                List.of(
                        new Path.Bend(centre.towards(220, radius), radius, false),
                        new Path.Bend(centre.towards(355, radius), radius, false)),
                false);
        return new Mark.Stroke(LineStyle.NARROW, Ink.INK, path);
    }

    private void hidden(Hole hole, Length at) {
        double x = size(at);
        double half = size(bore(hole)) / 2;
        double top = -size(block.thickness().length());
        double full = switch (hole.depth()) {
            case Depth.Through() -> 0;
            case Depth.Blind(var depth) -> top + size(depth.length());
        };
        double floor = Math.min(0, full + (full < 0 ? room(hole, full, half) : 0));
        double surface = top + size(cutAway(hole));
        walls(x, half, surface, floor);
        if (hole instanceof Hole.Counterbored bored) {
            double head = size(bored.head().length()) / 2;
            double seat = top + size(bored.headDepth().length());
            if (seat > surface) {
                walls(x, head, surface, seat);
                pencil.line(LineStyle.HIDDEN, new Point(x - head, seat), new Point(x + head, seat));
            }
        }
        thread(hole).ifPresent(thread -> {
            double root = half + Math.max(ThreadLines.LEAST, size(thread.depth()));
            walls(x, root, surface, full);
            if (full < 0) {
                pencil.line(LineStyle.HIDDEN, new Point(x - root, full), new Point(x + root, full));
            }
        });
        if (floor < 0) {
            double tip = Math.min(0, floor + half * POINT);
            pencil.line(
                    LineStyle.HIDDEN,
                    List.of(new Point(x - half, floor), new Point(x, tip), new Point(x + half, floor)));
            pencil.line(LineStyle.HIDDEN, new Point(x - half, floor), new Point(x + half, floor));
        }
        pencil.line(LineStyle.CHAIN, new Point(x, surface - OVERRUN), new Point(x, OVERRUN));
    }

    /** How much of the block is cut away from the top over the middle of a hole. */
    private Length cutAway(Hole hole) {
        return block.cuts().stream()
                .filter(cut -> covers(cut.area(block), hole))
                .map(cut -> cut.depth().length())
                .reduce(Length.ZERO, Length::most);
    }

    private static boolean covers(BlockCut.Area area, Hole hole) {
        Length x = hole.x().length();
        Length y = hole.y().length();
        return !x.isLessThan(area.left())
                && !x.isMoreThan(area.right())
                && !y.isLessThan(area.lower())
                && !y.isMoreThan(area.upper());
    }

    /** How much deeper than its full thread a tapped hole is drilled (mm on paper), as far as the block is thick enough. */
    private double room(Hole hole, double full, double half) {
        double least = -full - half * POINT - LEFT;
        return thread(hole)
                .map(thread -> Math.clamp(size(ToolRoom.forTap(thread)), 0, Math.max(0, least)))
                .orElse(0.0);
    }

    private void walls(double x, double half, double top, double floor) {
        if (floor <= top) {
            return;
        }
        pencil.line(LineStyle.HIDDEN, new Point(x - half, top), new Point(x - half, floor));
        pencil.line(LineStyle.HIDDEN, new Point(x + half, top), new Point(x + half, floor));
    }
}
