package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.Bulge;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;

/**
 * The flank of a curved section in the plane through the axis, its end nearer A at 0. All in nanometres.
 *
 * @param length along the axis
 * @param from radius of the part at its end nearer A
 * @param to radius of the part at its end nearer B
 * @param radius of the arc
 */
public record CurvedFlank(double length, double from, double to, double radius, Bulge bulge) {
    /** How far rounding may bring an end over the middle of its circle (nm). */
    private static final double NEAR = 10;

    public static CurvedFlank of(Section.Curved section) {
        return new CurvedFlank(
                section.length().nanometres(),
                section.towardsA().length().half().nanometres(),
                section.towardsB().length().half().nanometres(),
                section.radius().length().nanometres(),
                section.bulge());
    }

    /** The least radius of a circle that reaches both ends. */
    public Length least() {
        return new Length((long) Math.ceil(halfChord()));
    }

    private double halfChord() {
        return Math.hypot(length, to - from) / 2;
    }

    /** Whether such an arc joins the two ends without going back along the axis. */
    public boolean isPossible() {
        if (radius < halfChord() - NEAR) {
            return false;
        }
        double centre = centreR();
        return switch (bulge) {
            case CONVEX -> Math.min(from, to) >= centre - NEAR;
            case CONCAVE -> Math.max(from, to) <= centre + NEAR;
        };
    }

    /** How far the centre lies from the chord, over the chord's length. */
    private double lean() {
        double off = Math.sqrt(Math.max(0, radius * radius - halfChord() * halfChord())) / (2 * halfChord());
        return bulge == Bulge.CONVEX ? -off : off;
    }

    private double centreZ() {
        return length / 2 - lean() * (to - from);
    }

    private double centreR() {
        return (from + to) / 2 + lean() * length;
    }

    /** The stations along it, beginning at a position; they never go back, and end where the section ends. */
    List<Station> stations(Length start) {
        double z = centreZ();
        double r = centreR();
        List<Station> chords = new Arc(z, r, radius).chords(Math.atan2(from - r, -z), Math.atan2(to - r, length - z));
        List<Station> stations = new ArrayList<>();
        Length last = Length.ZERO;
        for (Station chord : chords.subList(1, chords.size() - 1)) {
            last = Length.most(last, Length.least(chord.at(), new Length(Math.round(length))));
            stations.add(new Station(start.plus(last), chord.radius()));
        }
        stations.addFirst(new Station(start, new Length(Math.round(from))));
        stations.addLast(new Station(start.plus(new Length(Math.round(length))), new Length(Math.round(to))));
        return stations;
    }
}
