package chargehand.part.shape;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An arc of a circle in the plane through the axis, as chords that lie within {@link #CHORD_ERROR} of it.
 *
 * @param z the centre's position (nm)
 * @param r the centre's distance from the axis (nm)
 * @param radius of the circle (nm), more than zero
 */
record Arc(double z, double r, double radius) {
    /** The most that a chord may stray from its arc. */
    static final Length CHORD_ERROR = new Length(200);

    /** The stations from one angle to another (radians, 0 towards end B, a quarter turn outward). */
    List<Station> chords(double from, double to) {
        int count = chordCount(Math.abs(to - from));
        var stations = new ArrayList<Station>();
        for (int i = 0; i <= count; i++) {
            double angle = from + (to - from) * i / count;
            stations.add(Station.nm(z + radius * Math.cos(angle), r + radius * Math.sin(angle)));
        }
        return stations;
    }

    private int chordCount(double sweep) {
        double cosine = Math.max(0, 1 - CHORD_ERROR.nanometres() / radius);
        return Math.max(1, (int) Math.ceil(sweep / (2 * Math.acos(cosine))));
    }
}
