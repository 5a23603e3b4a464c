package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import java.util.Optional;

/** Finds the corner that an edge is cut on, and the path that cuts it. */
final class EdgeCut {
    /** How far the corner may lie off what the operation says. */
    private static final Length NEAR = Deviation.ALLOWED;

    private EdgeCut() {}

    /** The path; nothing where the work has no corner of that size there. */
    static Optional<Profile> path(TurnedWork work, Cut.FinishEdge edge) {
        Length reach = EdgePath.reach(edge.form());
        Length joint = edge.towards().from(edge.at(), reach);
        Optional<Span> stretch = Span.between(edge.at(), joint)
                .filter(span -> Carving.span(work.outer()).holds(span, Length.ZERO));
        if (stretch.isEmpty()) {
            return Optional.empty();
        }
        Length corner = edge.diameter().half();
        Profile flank = edge.inside() ? work.inner() : work.outer();
        Length joined = beyond(flank, joint, edge.towards());
        if (joined.isZero() || (edge.inside() && !joined.isWithin(NEAR, corner))) {
            return Optional.empty();
        }
        double slope = joined.minus(corner).over(reach);
        boolean outward = edge.inside() || isHollow(work.outer(), edge);
        return isCorner(work, edge, outward)
                ? Optional.of(new EdgePath(edge.at(), edge.towards(), corner, slope, outward).of(edge.form()))
                : Optional.empty();
    }

    /** Whether an outside stands prouder on the far side of a corner. */
    static boolean isHollow(Profile outside, Cut.FinishEdge edge) {
        return behind(outside, edge).isMoreThan(edge.diameter().half().plus(NEAR));
    }

    /** A free corner stands out beyond what lies behind it and is still sharp; a hollow one only takes a radius. */
    private static boolean isCorner(TurnedWork work, Cut.FinishEdge edge, boolean outward) {
        Length corner = edge.diameter().half();
        if (edge.inside()) {
            return behind(work.inner(), edge).isMoreThan(corner.plus(NEAR)) || isAtFace(work, edge);
        }
        return outward
                ? edge.form() instanceof Cut.EdgeForm.Radius
                : behind(work.outer(), edge).isLessThan(corner.minus(NEAR))
                        && !beyond(work.outer(), edge.at(), edge.towards()).isLessThan(corner.minus(NEAR));
    }

    private static boolean isAtFace(TurnedWork work, Cut.FinishEdge edge) {
        return work.face(edge.towards().other()).equals(edge.at());
    }

    /** The radius just beyond a position, on the side of {@code towards}. */
    private static Length beyond(Profile profile, Length at, End towards) {
        return towards == End.B ? profile.radiusAfter(at) : profile.radiusBefore(at);
    }

    /** The radius just behind the corner; 0 where the work ends there. */
    private static Length behind(Profile profile, Cut.FinishEdge edge) {
        End back = edge.towards().other();
        Length face = back == End.A ? profile.start() : profile.end();
        boolean beside = edge.at().isLessThan(profile.start()) || edge.at().isMoreThan(profile.end());
        boolean metal = !beside && back.distance(edge.at(), face).isPositive();
        return metal ? beyond(profile, edge.at(), back) : Length.ZERO;
    }
}
