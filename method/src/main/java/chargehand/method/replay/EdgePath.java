package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * The path along which an edge is chamfered, rounded or left hollow, for a flank that is straight near the corner.
 *
 * @param at where the corner is along the axis
 * @param towards the side of the corner on which the flank lies
 * @param corner the radius of the flank at the corner
 * @param slope how much the flank's radius grows over one unit of the way from the corner
 * @param outward whether the edge leads away from the axis: a hollow corner outside, or the mouth of a bore
 */
record EdgePath(Length at, End towards, Length corner, double slope, boolean outward) {
    /** The most that a chord may stray from its arc: well within what the work may differ from the part. */
    private static final double CHORD_ERROR_NM = 150;

    /** How far along the axis an edge of this form reaches from its corner. */
    static Length reach(Cut.EdgeForm form) {
        return switch (form) {
            case Cut.EdgeForm.Chamfer chamfer -> chamfer.length();
            case Cut.EdgeForm.Radius radius -> radius.radius();
        };
    }

    /** The path of an edge of this form. */
    Profile of(Cut.EdgeForm form) {
        List<Station> stations = switch (form) {
            case Cut.EdgeForm.Chamfer(Length length, var angle) -> chamfer(length, angle.tan());
            case Cut.EdgeForm.Radius(Length radius) -> rounded((double) radius.nanometres());
        };
        return new Profile(towards == End.B ? stations : stations.reversed());
    }

    private Station station(double along, double radius) {
        Length nearest = new Length(Math.max(0, Math.round(radius)));
        return new Station(towards.from(at, new Length(Math.round(along))), nearest);
    }

    private double flank(double along) {
        return corner.nanometres() + slope * along;
    }

    private double sign() {
        return outward ? 1 : -1;
    }

    private List<Station> chamfer(Length length, double tangent) {
        double along = length.nanometres();
        return List.of(station(0, flank(along) + sign() * along * tangent), station(along, flank(along)));
    }

    /** A quarter of a circle, more or less, from the face it touches at its own radius to where it touches the flank. */
    private List<Station> rounded(double circle) {
        double centre = flank(circle) + sign() * circle * Math.hypot(1, slope);
        double foot = Math.PI / 2 - sign() * Math.atan(slope);
        int chords =
                (int) Math.ceil(Math.abs(Math.PI - foot) / (2 * Math.acos(1 - Math.min(1, CHORD_ERROR_NM / circle))));
        var stations = new ArrayList<Station>();
        for (int i = 0; i <= chords; i++) {
            double angle = Math.PI + (foot - Math.PI) * i / chords;
            stations.add(station(circle + circle * Math.cos(angle), centre - sign() * circle * Math.sin(angle)));
        }
        return stations;
    }
}
