package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import chargehand.drawing.sign.Arrow;
import chargehand.drawing.view.View;
import java.util.ArrayList;
import java.util.List;

/**
 * Where sizes stand so far, and how badly a further one would lie among them. The weights are our own; what they weigh is
 * what the standards ask for: no words on words or outlines, no dimension line crossed, leaders clear of everything.
 */
final class Board {
    private static final double WORDS_ON_WORDS = 1_000_000;
    private static final double OUTSIDE = 30;
    private static final double OUTSIDE_PER_MM = 8;
    private static final double WORDS_ON_OUTLINE = 1_000;
    private static final double WORDS_ON_LINE = 3_000;
    private static final double DIMENSIONS_CROSS = 500;
    private static final double EXTENSION_CROSSES_DIMENSION = 50;
    private static final double LEADERS_CROSS = 500;
    private static final double LEADER_CROSSES_DIMENSION = 400;
    private static final double LEADER_CROSSES_EXTENSION = 40;
    private static final double LINES_CROWD = 40;
    private static final double WORDS_IN_A_ROW = 20;
    private static final double ARROWS_CROWD = 40;
    private static final double WORDS_ON_AXIS = 25;
    private static final double WORDS_ON_HATCHING = 20;
    private static final double LEADER_ON_OUTLINE = 8;
    private static final double EXTENSIONS_CROSS = 5;
    private static final double WORDS_ON_PART = 3;

    /** Further out than anything (mm). */
    private static final double FAR = 10_000;

    /** How much air words need round them (mm). */
    private static final double AIR = 0.7;

    /** Nearer than this, two sizes side by side read as one (mm). */
    private static final double ROW = 4;

    /** Nearer than this, two lines side by side read as one (mm). */
    private static final double CROWDED = 1.4;

    /** Nearer than this, two dimension lines lie on each other (mm). */
    private static final double TOO_CLOSE = 0.5;

    private final View view;
    private final Obstacles outlines;
    private final Obstacles axes;
    private final Box limits;
    private final List<Placing> placed = new ArrayList<>();

    /**
     * An empty board.
     *
     * @param limits where sizes may stand, in the view's frame
     */
    Board(View view, Box limits) {
        this(view, new Obstacles(view.outlines()), new Obstacles(view.axes()), limits);
    }

    private Board(View view, Obstacles outlines, Obstacles axes, Box limits) {
        this.view = view;
        this.outlines = outlines;
        this.axes = axes;
        this.limits = limits;
    }

    /** Another board with the same on it. */
    Board copy() {
        Board copy = new Board(view, outlines, axes, limits);
        copy.placed.addAll(placed);
        return copy;
    }

    void add(Placing placing) {
        placed.add(placing);
    }

    void remove(Placing placing) {
        placed.remove(placing);
    }

    List<Placing> placed() {
        return List.copyOf(placed);
    }

    /** What it costs to put this one here, other sizes apart. */
    double alone(Placing placing) {
        double cost = placing.cost() + outside(placing.extent());
        for (Box text : placing.texts()) {
            Box airy = text.grown(AIR);
            cost += WORDS_ON_OUTLINE * outlines.meeting(airy);
            cost += WORDS_ON_AXIS * axes.meeting(airy);
            for (Box hatched : view.hatched()) {
                cost += text.overlaps(hatched) ? WORDS_ON_HATCHING : 0;
            }
        }
        for (Placing.Stroke line : placing.lines()) {
            if (line.kind() == Placing.Kind.LEADER) {
                cost += LEADER_ON_OUTLINE * outlines.crossing(line.segment());
            }
        }
        return cost + onPart(placing);
    }

    /** Callouts stand beside the part: nothing of it lies further out than their words. */
    private double onPart(Placing placing) {
        boolean called = !placing.lines().isEmpty()
                && placing.lines().stream().allMatch(line -> line.kind() == Placing.Kind.LEADER);
        if (!called) {
            return 0;
        }
        double cost = 0;
        for (Box text : placing.texts()) {
            Point middle = text.centre();
            Segment out = new Segment(middle, new Point(middle.x(), middle.y() < 0 ? -FAR : FAR));
            cost += outlines.crossing(out) > 0 ? WORDS_ON_PART : 0;
        }
        return cost;
    }

    private double outside(Box extent) {
        double over = Math.max(0, limits.left() - extent.left()) + Math.max(0, extent.right() - limits.right());
        return over > 0 ? OUTSIDE + OUTSIDE_PER_MM * over : 0;
    }

    /**
     * What it costs to put this one among the others.
     *
     * @param enough a cost from which on the exact one does not matter
     */
    double among(Placing placing, double enough) {
        double cost = 0;
        for (int i = 0; i < placed.size() && cost < enough; i++) {
            cost += between(placing, placed.get(i));
        }
        return cost;
    }

    /** What two sizes cost each other. */
    static double between(Placing one, Placing other) {
        return isFar(one.extent(), other.extent())
                ? 0
                : words(one, other) + words(other, one) + lines(one, other) + tips(one, other);
    }

    private static boolean isFar(Box one, Box other) {
        return one.left() - ROW >= other.right()
                || other.left() >= one.right() + ROW
                || one.top() - ROW >= other.bottom()
                || other.top() >= one.bottom() + ROW;
    }

    /** The words of one against the words and the lines of the other. */
    private static double words(Placing one, Placing other) {
        double cost = 0;
        for (int i = 0; i < one.texts().size(); i++) {
            Box text = one.texts().get(i);
            Box row = new Box(text.left() - ROW, text.top(), text.right() + ROW, text.bottom());
            if (row.overlaps(other.extent())) {
                cost += onWords(text.grown(AIR), row, other) + onLines(text.grown(AIR / 2), other);
            }
        }
        return cost;
    }

    private static double onWords(Box airy, Box row, Placing other) {
        double cost = 0;
        for (int i = 0; i < other.texts().size(); i++) {
            Box theirs = other.texts().get(i);
            cost += airy.overlaps(theirs) ? WORDS_ON_WORDS / 2 : row.overlaps(theirs) ? WORDS_IN_A_ROW : 0;
        }
        return cost;
    }

    private static double onLines(Box near, Placing other) {
        double cost = 0;
        for (int i = 0; i < other.lines().size(); i++) {
            cost += other.lines().get(i).segment().meets(near) ? WORDS_ON_LINE : 0;
        }
        cost += other.marks(near) ? WORDS_ON_LINE : 0;
        return cost;
    }

    private static double lines(Placing one, Placing other) {
        double cost = 0;
        for (int i = 0; i < one.lines().size(); i++) {
            Placing.Stroke mine = one.lines().get(i);
            for (int j = 0; j < other.lines().size(); j++) {
                Placing.Stroke theirs = other.lines().get(j);
                if (mine.segment().crosses(theirs.segment())) {
                    cost += crossing(mine.kind(), theirs.kind());
                } else if (areDimensions(mine, theirs) && mine.segment().isNearer(theirs.segment(), TOO_CLOSE)) {
                    cost += DIMENSIONS_CROSS;
                } else if (areLeaders(mine, theirs) && mine.segment().isNearer(theirs.segment(), CROWDED)) {
                    cost += LINES_CROWD;
                }
            }
        }
        return cost;
    }

    /** Arrows that would lie on each other. */
    private static double tips(Placing one, Placing other) {
        double cost = 0;
        for (int i = 0; i < one.arrows().size(); i++) {
            Point mine = one.arrows().get(i).tip();
            for (int j = 0; j < other.arrows().size(); j++) {
                Point theirs = other.arrows().get(j).tip();
                boolean near = Math.abs(mine.x() - theirs.x()) < Arrow.LENGTH
                        && Math.abs(mine.y() - theirs.y()) < Arrow.LENGTH;
                cost += near && mine.distance(theirs) < Arrow.LENGTH ? ARROWS_CROWD : 0;
            }
        }
        return cost;
    }

    private static boolean areDimensions(Placing.Stroke one, Placing.Stroke other) {
        return one.kind() == Placing.Kind.DIMENSION && other.kind() == Placing.Kind.DIMENSION;
    }

    private static boolean areLeaders(Placing.Stroke one, Placing.Stroke other) {
        return one.kind() == Placing.Kind.LEADER && other.kind() == Placing.Kind.LEADER;
    }

    private static double crossing(Placing.Kind one, Placing.Kind other) {
        if (one == other) {
            return switch (one) {
                case DIMENSION -> DIMENSIONS_CROSS;
                case EXTENSION -> EXTENSIONS_CROSS;
                case LEADER -> LEADERS_CROSS;
            };
        }
        if (one == Placing.Kind.LEADER || other == Placing.Kind.LEADER) {
            boolean dimension = one == Placing.Kind.DIMENSION || other == Placing.Kind.DIMENSION;
            return dimension ? LEADER_CROSSES_DIMENSION : LEADER_CROSSES_EXTENSION;
        }
        return EXTENSION_CROSSES_DIMENSION;
    }
}
