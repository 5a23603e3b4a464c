package chargehand.drawing.view;

import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * A regular polygon as it stands round the axis, its corners cut off by the diameter over corners. Angles run anticlockwise
 * as seen in the end view from end A, 0 to the right, in degrees; sizes are the part's own (mm).
 *
 * @param sides how many
 * @param flat from the axis to a flat
 * @param corner from the axis to a corner as turned, from {@code flat} to the sharp corner
 */
record PolygonOutline(int sides, double flat, double corner) {
    static PolygonOutline of(Solid.FlatsPlace place) {
        double flat = place.across().half().mm();
        double sharp = flat / Math.cos(Math.PI / place.sides());
        return new PolygonOutline(
                place.sides(), flat, Math.min(sharp, place.corners().half().mm()));
    }

    /** Whether a polygon of so many sides lies with a flat on top rather than a corner. */
    static boolean flatOnTop(int sides) {
        return sides % 4 == 0;
    }

    /** How far a flat's ends lie from its middle, as an angle. */
    double halfFlat() {
        return Math.toDegrees(Math.acos(Math.min(1, flat / corner)));
    }

    /** The angles of the middles of the flats. */
    List<Double> flats() {
        double step = 360.0 / sides;
        double first = flatOnTop(sides) ? 90 : 90 + step / 2;
        List<Double> flats = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            flats.add(first + i * step);
        }
        return flats;
    }
}
