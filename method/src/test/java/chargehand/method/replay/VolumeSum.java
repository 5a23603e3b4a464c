package chargehand.method.replay;

import chargehand.method.plan.Blank;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Hole;
import chargehand.part.Section;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.TreeSet;

/**
 * Volumes (mm³) added up from the description by schoolbook formulas, with nothing of the project's own profiles: cylinders
 * and frustums section by section, chamfers as rings between cylinder and frustum, radii by Pappus's theorem, polygons as
 * prisms within a cylinder, bores by Simpson's rule between their steps (exact for straight sides).
 */
final class VolumeSum {
    private final Body.Turned body;

    private VolumeSum(Body.Turned body) {
        this.body = body;
    }

    /** The part: threads at their crests, nothing cut across it. */
    static double of(Body.Turned body) {
        return new VolumeSum(body).outside() - new VolumeSum(body).hollow();
    }

    static double of(Body.Block block) {
        double bored = block.holes().stream()
                .mapToDouble(hole -> Math.PI
                        / 4
                        * Math.pow(diameter(hole), 2)
                        * block.thickness().length().mm())
                .sum();
        return block.length().length().mm()
                        * block.width().length().mm()
                        * block.thickness().length().mm()
                - bored;
    }

    private static double diameter(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> drilled.diameter().length().mm();
            case Hole.Reamed reamed -> reamed.diameter().length().mm();
            case Hole.Tapped tapped -> tapped.thread().minorInternal().mm();
            case Hole.Counterbored bored -> bored.diameter().length().mm();
        };
    }

    static double of(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar ->
                cylinder(bar.diameter().half().mm(), bar.to().minus(bar.from()).mm());
            case Blank.PolygonBar bar ->
                prism(bar.sides(), bar.flats().half().mm())
                        * bar.to().minus(bar.from()).mm();
            case Blank.OldPart old -> throw new IllegalArgumentException("an old part is no plain shape: " + old);
            case Blank.Slab slab ->
                slab.length().mm() * slab.width().mm() * slab.thickness().mm();
        };
    }

    private static double cylinder(double radius, double length) {
        return Math.PI * radius * radius * length;
    }

    private static double frustum(double one, double other, double length) {
        return Math.PI * length / 3 * (one * one + one * other + other * other);
    }

    private static double prism(int sides, double inner) {
        return sides * inner * inner * Math.tan(Math.PI / sides);
    }

    /** What a regular polygon and a disc have in common. */
    private static double withinDisc(int sides, double inner, double radius) {
        if (radius >= inner / Math.cos(Math.PI / sides)) {
            return prism(sides, inner);
        }
        if (radius <= inner) {
            return Math.PI * radius * radius;
        }
        double half = Math.acos(inner / radius);
        double segment = radius * radius * half - inner * Math.sqrt(radius * radius - inner * inner);
        return Math.PI * radius * radius - sides * segment;
    }

    private double outside() {
        double sum = 0;
        for (int i = 0; i < body.outside().size(); i++) {
            Section section = body.outside().get(i);
            sum += section instanceof Section.Polygon polygon
                    ? polygon(polygon)
                    : frustum(
                                    radius(section, End.A),
                                    radius(section, End.B),
                                    section.length().mm())
                            + corner(i, End.A)
                            + corner(i, End.B);
        }
        return sum;
    }

    private static double radius(Section section, End side) {
        return (side == End.A ? section.diameterTowardsA() : section.diameterTowardsB())
                .half()
                .mm();
    }

    /** A polygon with its chamfers, slice by slice: the disc within the chamfer's cone, cut by the flats. */
    private static double polygon(Section.Polygon polygon) {
        double inner = polygon.flats().length().half().mm();
        double corner = polygon.corners().half().mm();
        double length = polygon.length().mm();
        double sum = 0;
        int slices = 40_000;
        for (int i = 0; i < slices; i++) {
            double z = (i + 0.5) * length / slices;
            double radius = Math.min(
                    chamfered(polygon.stretch().atA(), corner, z),
                    chamfered(polygon.stretch().atB(), corner, length - z));
            sum += withinDisc(polygon.sides(), inner, radius) * length / slices;
        }
        return sum;
    }

    private static double chamfered(Edge edge, double radius, double fromEnd) {
        return edge instanceof Edge.Chamfer chamfer
                        && fromEnd < chamfer.length().length().mm()
                ? radius
                        - (chamfer.length().length().mm() - fromEnd)
                                * chamfer.angle().tan()
                : radius;
    }

    /** What an edge adds; a free edge adds less than nothing. Sections with radii must be straight cylinders. */
    private double corner(int index, End side) {
        Section section = body.outside().get(index);
        Edge edge = side == End.A ? section.stretch().atA() : section.stretch().atB();
        double radius = radius(section, side);
        return switch (edge) {
            case Edge.Plain plain -> 0;
            case Edge.Chamfer chamfer -> {
                double length = chamfer.length().length().mm();
                yield frustum(radius, radius - length * chamfer.angle().tan(), length) - cylinder(radius, length);
            }
            case Edge.WeldPreparation prepared -> {
                double length = prepared.reach().mm();
                yield frustum(radius, radius - prepared.depth().length().mm(), length) - cylinder(radius, length);
            }
            case Edge.Radius round -> rounding(round.radius().length().mm(), radius, isHollow(index, side));
        };
    }

    private boolean isHollow(int index, End side) {
        int neighbour = side == End.A ? index - 1 : index + 1;
        return neighbour >= 0
                && neighbour < body.outside().size()
                && radius(body.outside().get(neighbour), side.other())
                        > radius(body.outside().get(index), side);
    }

    /** Pappus: the area between a square and its quarter circle, carried round at its centroid. */
    private static double rounding(double arc, double radius, boolean hollow) {
        double area = arc * arc * (1 - Math.PI / 4);
        double centroid = arc * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
        return hollow ? 2 * Math.PI * (radius + centroid) * area : -2 * Math.PI * (radius - centroid) * area;
    }

    private double hollow() {
        var steps = new TreeSet<Double>(List.of(0.0, length()));
        body.inside().forEach(bore -> steps(bore).forEach(step -> steps.add(bounded(along(bore, step)))));
        double sum = 0;
        double from = steps.pollFirst();
        for (double to : steps) {
            double quarter = (to - from) / 1_000_000;
            sum += (to - from)
                    / 6
                    * (square(from + quarter) + 4 * square((from + to) / 2) + square(to - quarter))
                    * Math.PI;
            from = to;
        }
        return sum;
    }

    private double length() {
        return body.length().mm();
    }

    private double bounded(double z) {
        return Math.clamp(z, 0.0, length());
    }

    private double along(Bore bore, double depth) {
        return bore.from() == End.A ? depth : length() - depth;
    }

    private double square(double z) {
        double radius = body.inside().stream()
                .mapToDouble(bore -> radius(bore, bore.from() == End.A ? z : length() - z))
                .max()
                .orElse(0);
        return radius * radius;
    }

    private double depth(Bore bore) {
        return switch (bore.depth()) {
            case Depth.Through through -> length();
            case Depth.Blind blind -> blind.depth().length().mm();
        };
    }

    /** The depths at which a bore's shape changes: its mouth, bottom, and the tip of a drill's point. */
    private List<Double> steps(Bore bore) {
        double radius = mouth(bore) / 2;
        return switch (bore) {
            case Bore.Coned coned -> List.of(0.0, coneDepth(coned));
            case Bore.Drilled drilled -> List.of(depth(bore), depth(bore) + radius / Math.tan(Math.toRadians(59)));
            case Bore.Bored bored -> List.of(edge(bored.mouth()), depth(bore));
            case Bore.Reamed reamed -> List.of(edge(reamed.mouth()), depth(bore));
            case Bore.Counterbored counterbored -> List.of(edge(counterbored.mouth()), depth(bore));
            case Bore.Tapped tapped -> List.of(depth(bore));
        };
    }

    private static double edge(Edge edge) {
        return edge instanceof Edge.Chamfer chamfer ? chamfer.length().length().mm() : 0;
    }

    private static double coneDepth(Bore.Coned cone) {
        return (cone.mouth().length().mm() - cone.to().length().mm())
                / 2
                / cone.angle().half().tan();
    }

    private static double mouth(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> drilled.diameter().length().mm();
            case Bore.Bored bored -> bored.diameter().length().mm();
            case Bore.Reamed reamed -> reamed.diameter().length().mm();
            case Bore.Counterbored counterbored ->
                counterbored.diameter().length().mm();
            case Bore.Tapped tapped -> minor(tapped.thread());
            case Bore.Coned coned -> coned.mouth().length().mm();
        };
    }

    private static double minor(ScrewThread thread) {
        return thread.minorInternal().mm();
    }

    /** The radius of one bore at a depth from its own end; its mouth is chamfered at the face. */
    private double radius(Bore bore, double depth) {
        double radius = mouth(bore) / 2;
        double bottom = depth(bore);
        return switch (bore) {
            case Bore.Coned coned ->
                depth > coneDepth(coned)
                        ? 0
                        : radius - depth * coned.angle().half().tan();
            case Bore.Drilled drilled ->
                depth <= bottom ? radius : Math.max(0, radius - (depth - bottom) * Math.tan(Math.toRadians(59)));
            case Bore.Bored bored -> depth > bottom ? 0 : opened(bored.mouth(), radius, depth);
            case Bore.Reamed reamed -> depth > bottom ? 0 : opened(reamed.mouth(), radius, depth);
            case Bore.Counterbored counterbored -> depth > bottom ? 0 : opened(counterbored.mouth(), radius, depth);
            case Bore.Tapped tapped -> depth > bottom ? 0 : radius;
        };
    }

    private static double opened(Edge edge, double radius, double depth) {
        return edge instanceof Edge.Chamfer chamfer && depth < edge(edge)
                ? radius + (edge(edge) - depth) * chamfer.angle().tan()
                : radius;
    }
}
