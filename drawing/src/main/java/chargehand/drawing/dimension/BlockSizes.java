package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.BlockView;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.Size;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The sizes of a block: all lengths from its left end, all widths from its lower side, like holes called out once.
 */
public final class BlockSizes {
    private static final List<Integer> AROUND = List.of(60, 45, 120, 135, 75, 105);

    private final Body.Block block;
    private final SizeText text;
    private final double scale;

    private BlockSizes(Body.Block block, SizeText text, double scale) {
        this.block = block;
        this.text = text;
        this.scale = scale;
    }

    /** The view from above with all sizes but the thickness. */
    public static Dimensioned plan(Body.Block block, SizeText text, double scale, Box limits) {
        View view = BlockView.plan(block, scale);
        Board board = new Board(view, limits);
        BlockSizes sizes = new BlockSizes(block, text, scale);
        sizes.stack(sizes.lengths(Hole::x, sizes.places(BlockCut.Way.X), block.length()), Rail.level(Side.BELOW))
                .forEach(board::add);
        sizes.stack(sizes.lengths(Hole::y, sizes.places(BlockCut.Way.Y), block.width()), sizes.right())
                .forEach(board::add);
        return new Dimensioned(view, Arranger.place(board, sizes.callouts()).placed(), List.of());
    }

    /** The view from the front with the thickness. */
    public static Dimensioned front(Body.Block block, SizeText text, double scale) {
        BlockSizes sizes = new BlockSizes(block, text, scale);
        Size thickness = block.thickness();
        return new Dimensioned(
                BlockView.front(block, scale),
                sizes.stack(Map.of(thickness.length(), text.size(thickness)), sizes.right()),
                List.of());
    }

    /** The positions of holes and the whole length one way, each once, from the nearest on. */
    private Map<Length, Wording> lengths(Function<Hole, Size> way, List<Size> cuts, Size whole) {
        Map<Length, Wording> lengths = new TreeMap<>();
        for (Hole hole : block.holes()) {
            Size size = way.apply(hole);
            if (size.length().isPositive()) {
                lengths.putIfAbsent(size.length(), text.size(size));
            }
        }
        cuts.forEach(size -> lengths.putIfAbsent(size.length(), text.size(size)));
        lengths.put(whole.length(), text.size(whole));
        return lengths;
    }

    /** Where slots lie, one way. */
    private List<Size> places(BlockCut.Way way) {
        List<Size> places = new ArrayList<>();
        for (BlockCut cut : block.cuts()) {
            if (cut instanceof BlockCut.Slot slot && slot.along() != way) {
                places.add(slot.at());
            } else if (cut instanceof BlockCut.Slot slot
                    && slot.run() instanceof BlockCut.Run.Part(var from, var length)
                    && from.length().isPositive()) {
                places.add(from);
            }
        }
        return places;
    }

    private double size(Length length) {
        return scale * length.mm();
    }

    private Rail right() {
        return Rail.right(size(block.length().length()));
    }

    /** Lengths from a corner, along one side of the view. */
    private List<Placing> stack(Map<Length, Wording> lengths, Rail rail) {
        List<Span> spans = lengths.entrySet().stream()
                .map(length -> new Span(0, size(length.getKey()), length.getValue()))
                .toList();
        return new LengthStack(rail, 0, along -> 0).draw(spans, List.of());
    }

    /** One list of ways for each kind of hole: a leader to any one of them. */
    private List<List<Placing>> callouts() {
        Map<String, List<Hole>> alike = new LinkedHashMap<>();
        block.holes()
                .forEach(hole -> alike.computeIfAbsent(wording(hole).toString(), key -> new ArrayList<>())
                        .add(hole));
        List<List<Placing>> ways =
                new ArrayList<>(alike.values().stream().map(this::callout).toList());
        block.cuts().forEach(cut -> ways.add(callout(cut)));
        return ways;
    }

    private List<Placing> callout(BlockCut cut) {
        Wording what = switch (cut) {
            case BlockCut.Slot slot -> Wording.of("slot ").then(text.size(slot.width()));
            case BlockCut.Step step -> Wording.of("step ").then(text.size(step.width()));
        };
        Wording wording = what.then(length(cut))
                .then(Wording.of(", "))
                .then(text.size(cut.depth()))
                .then(Wording.of(" deep"));
        List<Point> tips = edges(cut.area(block));
        return new LeaderWays(Subject.inscription(wording), 0)
                .past(tips, true, -size(block.width().length()));
    }

    /** Points on the edges of a cut that lie within the block, the upper ones first. */
    private List<Point> edges(BlockCut.Area area) {
        List<Point> edges = new ArrayList<>();
        for (double part : new double[] {0.5, 0.3, 0.7}) {
            double x = size(area.left().plus(area.right().minus(area.left()).times(part)));
            double y = -size(area.lower().plus(area.upper().minus(area.lower()).times(part)));
            if (area.upper().isLessThan(block.width().length())) {
                edges.add(new Point(x, -size(area.upper())));
            }
            if (area.right().isLessThan(block.length().length())) {
                edges.add(new Point(size(area.right()), y));
            }
            if (area.left().isPositive()) {
                edges.add(new Point(size(area.left()), y));
            }
            if (area.lower().isPositive()) {
                edges.add(new Point(x, -size(area.lower())));
            }
        }
        return edges;
    }

    private Wording length(BlockCut cut) {
        return cut instanceof BlockCut.Slot slot && slot.run() instanceof BlockCut.Run.Part(var from, var length)
                ? Wording.of(" × ").then(text.size(length)).then(Wording.of(" long"))
                : Wording.of(" wide");
    }

    private List<Placing> callout(List<Hole> holes) {
        Wording one = wording(holes.getFirst());
        Wording all = holes.size() > 1 ? Wording.of(holes.size() + "× ").then(one) : one;
        LeaderWays leader = new LeaderWays(Subject.inscription(all), 0);
        double top = -size(block.width().length());
        return holes.stream()
                .flatMap(hole -> AROUND.stream()
                        .map(angle -> centre(hole).towards(angle, size(BlockView.bore(hole)) / 2))
                        .flatMap(tip -> leader.past(List.of(tip), true, top).stream()))
                .toList();
    }

    private Point centre(Hole hole) {
        return new Point(size(hole.x().length()), -size(hole.y().length()));
    }

    private Wording wording(Hole hole) {
        Wording what = switch (hole) {
            case Hole.Drilled drilled -> text.diameter(drilled.diameter());
            case Hole.Reamed reamed -> text.diameter(reamed.diameter());
            case Hole.Tapped tapped -> SectionWays.thread(tapped.thread(), "");
            case Hole.Counterbored bored -> text.diameter(bored.diameter());
        };
        Wording whole = deep(hole, what);
        return hole instanceof Hole.Counterbored bored
                ? whole.then(Wording.of(", counterbored "))
                        .then(text.diameter(bored.head()))
                        .then(Wording.of(" × "))
                        .then(text.size(bored.headDepth()))
                        .then(Wording.of(" deep"))
                : whole;
    }

    private Wording deep(Hole hole, Wording what) {
        return switch (hole.depth()) {
            case Depth.Through() -> what.then(Wording.of(" through"));
            case Depth.Blind(Size depth) ->
                what.then(Wording.of(", ")).then(text.size(depth)).then(Wording.of(" deep"));
        };
    }
}
