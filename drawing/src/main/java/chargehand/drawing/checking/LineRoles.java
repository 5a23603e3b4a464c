package chargehand.drawing.checking;

import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Tells dimension lines, extension lines and leaders apart by the arrows that lie on them or touch them. */
final class LineRoles {
    /** As near as an arrow must be to what it touches (mm). */
    static final double ON_LINE = 0.01;

    private static final double LEVEL = 1e-6;

    private final Ground ground;
    private final Set<Segment> dimensions = new LinkedHashSet<>();
    private final Set<Segment> leaders = new LinkedHashSet<>();
    private final Set<Segment> extensions = new LinkedHashSet<>();

    LineRoles(Ground ground) {
        this.ground = ground;
        List<Segment> narrow = ground.lines().stream()
                .filter(Ground.Line::isNarrowAndStraight)
                .map(line -> ((Trace.Straight) line.trace()).segment())
                .toList();
        for (Ground.Head head : ground.heads()) {
            narrow.stream()
                    .filter(line -> carries(line, head))
                    .forEach(line -> (isSquare(line) ? dimensions : leaders).add(line));
        }
        narrow.stream()
                .filter(line -> isSquare(line) && !dimensions.contains(line) && isTouched(line))
                .forEach(extensions::add);
        shelves(narrow);
    }

    List<Segment> dimensions() {
        return List.copyOf(dimensions);
    }

    List<Segment> leaders() {
        return List.copyOf(leaders);
    }

    List<Segment> extensions() {
        return List.copyOf(extensions);
    }

    /** Whether an arrow lies along a line. */
    static boolean carries(Segment line, Ground.Head head) {
        return line.distance(head.tip()) < ON_LINE && line.distance(head.heel()) < ON_LINE;
    }

    /** Whether an arrow of a dimension line square to this line touches it. */
    private boolean isTouched(Segment line) {
        return ground.heads().stream()
                .anyMatch(head -> line.distance(head.tip()) < ON_LINE
                        && line.distance(head.heel()) > 1
                        && isSquare(new Segment(head.tip(), head.heel())));
    }

    private static boolean isSquare(Segment line) {
        return Math.abs(line.from().x() - line.to().x()) < LEVEL
                || Math.abs(line.from().y() - line.to().y()) < LEVEL;
    }

    /** The level ends of leaders, where the words stand. */
    private void shelves(List<Segment> narrow) {
        List<Segment> found = new ArrayList<>();
        for (Segment leader : leaders) {
            narrow.stream()
                    .filter(line -> isSquare(line) && (meet(line, leader.from()) || meet(line, leader.to())))
                    .forEach(found::add);
        }
        leaders.addAll(found);
    }

    private static boolean meet(Segment line, Point end) {
        return line.from().distance(end) < LEVEL || line.to().distance(end) < LEVEL;
    }

    /** Whether two lines cross, not where an arrow of either touches the other. */
    boolean cross(Segment one, Segment other) {
        return one.crosses(other)
                && ground.heads().stream()
                        .noneMatch(head -> one.distance(head.tip()) < ON_LINE && other.distance(head.tip()) < ON_LINE);
    }
}
