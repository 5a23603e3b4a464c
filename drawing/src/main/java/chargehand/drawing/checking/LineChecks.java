package chargehand.drawing.checking;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Looks at the lines of a sheet: what crosses what, and whether arrows touch what they should. */
record LineChecks(Ground ground) {
    /** The group 0.25/0.35/0.5 mm, and 0.7 for the frame (ISO 128-2, from memory). */
    private static final Set<LineStyle> GROUP = EnumSet.complementOf(EnumSet.of(LineStyle.HEAVY));

    /** Two dimension lines that share more than this lie on each other (mm). */
    private static final double SHARED = 0.1;

    /** The circle at the origin of running dimensions is no larger (mm). */
    private static final double ORIGIN = 2;

    List<SheetFault> all() {
        List<SheetFault> faults = new ArrayList<>();
        crossings(new LineRoles(ground), faults);
        ground.heads().forEach(head -> arrow(head, faults));
        ground.lines().stream()
                .filter(line -> !GROUP.contains(line.style()))
                .forEach(line -> faults.add(SheetFault.of(
                        FaultKind.ODD_WIDTH, "a line " + line.style().width() + " mm wide")));
        return faults;
    }

    private void crossings(LineRoles roles, List<SheetFault> faults) {
        pairs(roles.dimensions(), (one, other) -> {
            if (roles.cross(one, other) || (share(one, other) && !runFromOneOrigin(one, other))) {
                faults.add(at(FaultKind.DIMENSION_LINES_CROSS, one));
            }
        });
        pairs(roles.leaders(), (one, other) -> add(roles, FaultKind.LEADERS_CROSS, one, other, faults));
        pairs(roles.extensions(), (one, other) -> add(roles, FaultKind.EXTENSIONS_CROSS, one, other, faults));
        for (Segment extension : roles.extensions()) {
            roles.dimensions().forEach(line -> add(roles, FaultKind.DIMENSION_LINE_CROSSED, line, extension, faults));
            roles.leaders().forEach(line -> add(roles, FaultKind.EXTENSIONS_CROSS, line, extension, faults));
        }
        for (Segment leader : roles.leaders()) {
            roles.dimensions().forEach(line -> add(roles, FaultKind.LEADERS_CROSS, leader, line, faults));
        }
    }

    private interface Pair {
        void both(Segment one, Segment other);
    }

    private static void pairs(List<Segment> lines, Pair pair) {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                pair.both(lines.get(i), lines.get(j));
            }
        }
    }

    private static void add(LineRoles roles, FaultKind kind, Segment one, Segment other, List<SheetFault> faults) {
        if (roles.cross(one, other)) {
            faults.add(at(kind, one));
        }
    }

    private static SheetFault at(FaultKind kind, Segment line) {
        Point middle = line.from().between(line.to(), 0.5);
        return SheetFault.of(kind, kind.text(), middle);
    }

    /** Whether both are running dimensions that begin at one circle. */
    private boolean runFromOneOrigin(Segment one, Segment other) {
        return ground.lines().stream()
                .filter(line -> line.style() == LineStyle.NARROW)
                .map(Ground.Line::trace)
                .anyMatch(trace -> trace instanceof Trace.Round circle
                        && isSmall(circle)
                        && one.distance(circle.centre()) < LineRoles.ON_LINE
                        && other.distance(circle.centre()) < LineRoles.ON_LINE);
    }

    private static boolean isSmall(Trace.Round circle) {
        return circle.sweep() == 360 && circle.radius() <= ORIGIN;
    }

    /** Whether two lines lie along each other. */
    private static boolean share(Segment one, Segment other) {
        boolean along = one.distance(other.from()) < LineRoles.ON_LINE && one.distance(other.to()) < LineRoles.ON_LINE;
        boolean over = other.distance(one.from()) < LineRoles.ON_LINE && other.distance(one.to()) < LineRoles.ON_LINE;
        return along || over || shared(one, other) > SHARED;
    }

    /** How much of a line lies on another that runs the same way (mm). */
    private static double shared(Segment one, Segment other) {
        double level = Math.min(right(one), right(other)) - Math.max(left(one), left(other));
        double upright = Math.min(low(one), low(other)) - Math.max(high(one), high(other));
        boolean sameLevel = low(one) - high(one) < LineRoles.ON_LINE
                && low(other) - high(other) < LineRoles.ON_LINE
                && Math.abs(low(one) - low(other)) < LineRoles.ON_LINE;
        boolean sameUpright = right(one) - left(one) < LineRoles.ON_LINE
                && right(other) - left(other) < LineRoles.ON_LINE
                && Math.abs(left(one) - left(other)) < LineRoles.ON_LINE;
        return sameLevel ? level : sameUpright ? upright : 0;
    }

    private static double left(Segment line) {
        return Math.min(line.from().x(), line.to().x());
    }

    private static double right(Segment line) {
        return Math.max(line.from().x(), line.to().x());
    }

    private static double high(Segment line) {
        return Math.min(line.from().y(), line.to().y());
    }

    private static double low(Segment line) {
        return Math.max(line.from().y(), line.to().y());
    }

    /** An arrow has its own line behind it and touches another at its tip. */
    private void arrow(Ground.Head head, List<SheetFault> faults) {
        boolean carried = ground.lines().stream()
                .filter(Ground.Line::isNarrowAndStraight)
                .anyMatch(line -> LineRoles.carries(((Trace.Straight) line.trace()).segment(), head));
        boolean touches = ground.lines().stream()
                .filter(line -> line.style() != LineStyle.HATCH && line.style() != LineStyle.FRAME)
                .anyMatch(line -> line.trace().distance(head.tip()) <= LineRoles.ON_LINE
                        && line.trace().distance(head.heel()) > LineRoles.ON_LINE);
        if (!carried || !touches) {
            String say = carried ? "an arrow touches nothing" : "an arrow has no line behind it";
            faults.add(SheetFault.of(FaultKind.ARROW_OFF_LINE, say, head.tip()));
        }
    }
}
