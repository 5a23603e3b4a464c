package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.BoreGroove;
import chargehand.drawing.view.EndView;
import chargehand.drawing.view.FaceHole;
import chargehand.drawing.view.Look;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The sizes that an end view gives: keyways of bores by their width and by how far it is to their floor, holes on circles. */
public record EndCallouts(Look look, End from) {
    private static final Point AXIS = new Point(0, 0);
    private static final double GAP = 1;
    private static final double OVERSHOOT = 2;
    private static final double FAR = 10_000;
    private static final double CALLOUT = 2;
    private static final double SQUARE = 0.5;
    private static final List<Integer> AROUND = List.of(60, 45, 120, 135, 30, 150);

    /** Whether there is anything that an end view from this end gives or alone shows. */
    public boolean any() {
        return !keyways().isEmpty() || !holes().isEmpty() || showsSlit();
    }

    /** A slit shows for what it is only where it runs out, from end A where it does there. */
    private boolean showsSlit() {
        return look.solid().across().stream()
                .filter(Across.Slit.class::isInstance)
                .anyMatch(slit -> from == End.A
                        ? slit.begins().isZero()
                        : !slit.begins().isZero()
                                && slit.ends().equals(look.solid().length()));
    }

    /** Keyways of bores are given from end A where they open there, otherwise from B. */
    private List<BoreGroove> keyways() {
        return look.body().stream()
                .flatMap(body -> BoreGroove.of(body, look.solid()).stream())
                .filter(groove -> groove.feature() instanceof InBore.Keyway)
                .filter(groove -> from == (groove.opensAt(Length.ZERO) ? End.A : End.B))
                .filter(groove -> isSquare(look, groove))
                .toList();
    }

    /** Whether a keyway lies square to the paper's edges, so that its sizes can stand at it. */
    static boolean isSquare(Look look, BoreGroove groove) {
        double direction = EndView.direction(look, groove.around(), End.A);
        return Math.abs(Math.IEEEremainder(direction, 90)) < SQUARE;
    }

    private List<FaceHole> holes() {
        return look.body().stream()
                .flatMap(body -> FaceHole.of(body, look.solid()).stream())
                .filter(hole -> hole.feature().end() == from)
                .toList();
    }

    private double size(Length length) {
        return look.scale().size(length);
    }

    private double outline() {
        return size(look.solid().outer().most(Length.ZERO, look.solid().length()));
    }

    /**
     * What stands there and these sizes, placed clear of it and of each other.
     *
     * @param there what was placed before, below the view
     */
    List<Placing> placed(View view, SizeText text, List<Placing> there) {
        Board board = new Board(view, new Box(-FAR, -FAR, FAR, FAR));
        there.forEach(board::add);
        double far = outline() + LengthStack.FIRST + LengthStack.NEXT * there.size();
        for (BoreGroove keyway : keyways()) {
            Square square = new Square(EndView.direction(look, keyway.around(), from));
            board.add(width(keyway, square, far, text));
            board.add(toFloor(keyway, square, far, text));
            far += LengthStack.NEXT;
        }
        List<List<Placing>> ways = new ArrayList<>();
        Set<Length> circles = new HashSet<>();
        for (FaceHole hole : holes()) {
            ways.add(callout(hole, text));
            if (circles.add(hole.circle().diameter().length())) {
                ways.add(circle(hole, text));
            }
        }
        return Arranger.place(board, ways).placed();
    }

    /**
     * A frame square to a direction on paper.
     *
     * @param direction outward (degrees, 0 to the right)
     */
    private record Square(double direction) {
        Point at(double out, double aside) {
            return AXIS.towards(direction, out).towards(direction - 90, aside);
        }

        /** Whether outward is more up or down than to a side. */
        boolean upright() {
            return Math.abs(Math.sin(Math.toRadians(direction))) > Math.abs(Math.cos(Math.toRadians(direction)));
        }
    }

    /** A dimension line between two points, read from the bottom or, where it is upright, from the right. */
    private static void line(Placing.Pen pen, Point one, Point other, Wording wording) {
        boolean upright = Math.abs(one.y() - other.y()) > Math.abs(one.x() - other.x());
        Point begin = Stream.of(one, other)
                .min(Comparator.comparingDouble(point -> upright ? -point.y() : point.x()))
                .orElseThrow();
        new LinearDimension(new Local(begin, upright ? 90 : 0), one.distance(other), wording).draw(pen, true);
    }

    private Placing width(BoreGroove keyway, Square square, double far, SizeText text) {
        double half = size(keyway.width()) / 2;
        double floor = size(keyway.floor());
        Placing.Pen pen = Placing.pen();
        for (double aside : new double[] {-half, half}) {
            pen.line(Placing.Kind.EXTENSION, square.at(floor + GAP, aside), square.at(far + OVERSHOOT, aside));
        }
        InBore.Keyway feature = (InBore.Keyway) keyway.feature();
        line(pen, square.at(far, -half), square.at(far, half), text.size(feature.width()));
        return pen.at(0);
    }

    /** From the far wall of the bore to the floor: what a calliper measures. */
    private Placing toFloor(BoreGroove keyway, Square square, double far, SizeText text) {
        double half = size(keyway.width()) / 2;
        double floor = size(keyway.floor());
        double wall = -size(keyway.radius());
        Point trial = square.at(0, 1);
        double side = square.upright() ? Math.signum(trial.x()) : Math.signum(trial.y());
        Placing.Pen pen = Placing.pen()
                .line(Placing.Kind.EXTENSION, square.at(wall, side * GAP), square.at(wall, side * (far + OVERSHOOT)))
                .line(
                        Placing.Kind.EXTENSION,
                        square.at(floor, side * (half + GAP)),
                        square.at(floor, side * (far + OVERSHOOT)));
        Length across = keyway.radius().times(2).plus(keyway.depth());
        InBore.Keyway feature = (InBore.Keyway) keyway.feature();
        line(
                pen,
                square.at(wall, side * far),
                square.at(floor, side * far),
                text.length(across, feature.depth().tolerance()));
        return pen.at(0);
    }

    private List<Placing> callout(FaceHole hole, SizeText text) {
        Wording wording = switch (hole.feature()) {
            case OnEnd.Drilled drilled ->
                Wording.of(count(hole)).then(text.diameter(drilled.diameter())).then(deep(drilled.depth(), text));
            case OnEnd.Tapped tapped ->
                Wording.of(count(hole))
                        .then(SectionWays.thread(tapped.thread(), tapped.fit()))
                        .then(deep(tapped.depth(), text));
        };
        LeaderWays leader = new LeaderWays(Subject.inscription(wording), CALLOUT);
        double circle = size(hole.circle().diameter().length()) / 2;
        List<Placing> ways = new ArrayList<>();
        for (int i = 0; i < hole.circle().count(); i++) {
            Point centre = AXIS.towards(EndView.direction(look, hole.bearing(i), from), circle);
            for (int angle : AROUND) {
                ways.addAll(past(leader, centre.towards(centre.y() > 0 ? -angle : angle, size(hole.diameter()) / 2)));
            }
        }
        return ways;
    }

    private static String count(FaceHole hole) {
        return hole.circle().count() > 1 ? hole.circle().count() + "× " : "";
    }

    private static Wording deep(Depth depth, SizeText text) {
        return switch (depth) {
            case Depth.Through() -> Wording.of(" through");
            case Depth.Blind(var size) -> Wording.of(", ").then(text.size(size)).then(Wording.of(" deep"));
        };
    }

    /** The circle that the holes stand on. */
    private List<Placing> circle(FaceHole hole, SizeText text) {
        Wording wording = text.diameter(hole.circle().diameter()).then(Wording.of(" PCD"));
        LeaderWays leader = new LeaderWays(Subject.inscription(wording), CALLOUT);
        double circle = size(hole.circle().diameter().length()) / 2;
        return Stream.iterate(5, degrees -> degrees < 360, degrees -> degrees + 10)
                .flatMap(degrees -> past(leader, AXIS.towards(degrees, circle)).stream())
                .toList();
    }

    private List<Placing> past(LeaderWays leader, Point tip) {
        boolean upward = tip.y() <= 0;
        return leader.past(List.of(tip), upward, upward ? -outline() : outline());
    }
}
