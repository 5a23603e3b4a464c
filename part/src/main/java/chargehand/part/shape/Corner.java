package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.Edge;
import java.util.List;

/**
 * The corner where a straight flank meets a face square to the axis, seen from the face: the flank runs off to the right
 * from the corner at position 0.
 *
 * <p>A free corner is rounded or chamfered inward, towards the axis; a hollow one is filled outward, up the face of its
 * larger neighbour. The mouth of a bore has the form of a hollow one: its edge opens outward.
 *
 * @param radius of the flank at the corner (nm)
 * @param slope of the flank: how much its radius grows over one unit of position
 * @param outward whether the edge leads outward from the flank
 */
record Corner(double radius, double slope, boolean outward) {
    /** The stations of the edge from the face to where it joins the flank; just the corner where it is plain. */
    List<Station> stations(Edge edge) {
        return switch (edge) {
            case Edge.Plain() -> List.of(Station.nm(0, radius));
            case Edge.Chamfer(var length, var angle) -> chamfer(length.length(), angle.tan());
            case Edge.Radius(var size) -> rounded(size.length());
            case Edge.WeldPreparation prepared ->
                chamfer(prepared.reach(), 1 / prepared.angle().tan());
        };
    }

    private double sign() {
        return outward ? 1 : -1;
    }

    private double flankAt(double u) {
        return radius + slope * u;
    }

    private List<Station> chamfer(Length length, double tangent) {
        double u = length.nanometres();
        return List.of(Station.nm(0, flankAt(u) + sign() * u * tangent), Station.nm(u, flankAt(u)));
    }

    /** A circle touching the face and the flank. */
    private List<Station> rounded(Length size) {
        double circle = size.nanometres();
        double centre = flankAt(circle) + sign() * circle * Math.hypot(1, slope);
        double foot = outward ? Math.atan(slope) + 1.5 * Math.PI : Math.atan(slope) + Math.PI / 2;
        return new Arc(circle, centre, circle).chords(Math.PI, foot);
    }
}
