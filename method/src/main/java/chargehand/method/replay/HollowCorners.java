package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * The hollow corners of one set-up that still get their radius. A cut that ends in such a corner stops short and leaves
 * metal there as wide and as high as the radius, for the round-nosed tool that follows.
 *
 * @param corners the cuts that will form them
 */
record HollowCorners(List<Cut.FinishEdge> corners) {
    HollowCorners {
        corners = List.copyOf(corners);
    }

    /**
     * The corners that later operations form.
     *
     * @param part the outside of the finished part, which tells hollow corners from those that are rounded off
     */
    static HollowCorners formedBy(List<Operation> later, Profile part) {
        return new HollowCorners(later.stream()
                .map(Operation::cut)
                .filter(Cut.FinishEdge.class::isInstance)
                .map(Cut.FinishEdge.class::cast)
                .filter(edge -> !edge.inside() && edge.form() instanceof Cut.EdgeForm.Radius)
                .filter(edge -> EdgeCut.isHollow(part, edge))
                .toList());
    }

    /** The path of a turning cut, lifted where it has to leave metal for a radius. */
    Profile sparing(Profile path) {
        Profile spared = path;
        for (Cut.FinishEdge corner : corners) {
            if (endsIn(path, corner)) {
                spared = lifted(spared, corner);
            }
        }
        return spared;
    }

    private static boolean endsIn(Profile path, Cut.FinishEdge corner) {
        Station end = corner.towards() == End.B
                ? path.stations().getFirst()
                : path.stations().getLast();
        return end.at().equals(corner.at())
                && end.radius().isWithin(Deviation.ALLOWED, corner.diameter().half());
    }

    private static Profile lifted(Profile path, Cut.FinishEdge corner) {
        Length reach = Length.least(
                EdgePath.reach(corner.form()), path.end().minus(path.start()).half());
        Length joint = corner.towards().from(corner.at(), reach);
        Profile left = Carving.level(Span.between(corner.at(), joint).orElseThrow(), height(path, corner, joint));
        var stations = new ArrayList<Station>();
        if (corner.towards() == End.B) {
            stations.addAll(left.stations());
            stations.addAll(path.cut(joint, path.end()).stations());
        } else {
            stations.addAll(path.cut(path.start(), joint).stations());
            stations.addAll(left.stations());
        }
        return new Profile(stations);
    }

    /** How far up its wall the radius reaches. */
    private static Length height(Profile path, Cut.FinishEdge corner, Length joint) {
        Length foot = corner.diameter().half();
        Length joined = corner.towards() == End.B ? path.radiusAfter(joint) : path.radiusBefore(joint);
        double slope = joined.minus(foot).over(joint.minus(corner.at()).abs());
        Profile radius = new EdgePath(corner.at(), corner.towards(), foot, slope, true).of(corner.form());
        return radius.most(radius.start(), radius.end());
    }
}
