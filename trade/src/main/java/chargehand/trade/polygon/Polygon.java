package chargehand.trade.polygon;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import java.util.Locale;

/**
 * A regular shape of so many flats about an axis.
 *
 * <p>Across flats is twice the distance from the axis to a flat, which for an even number of flats is what a calliper
 * reads across opposite ones. Across corners is the diameter of the circle through all corners: the smallest round bar
 * that holds the shape. With an odd number of flats a calliper reads from a flat to the corner opposite, which is
 * {@link #overFlatAndCorner}.
 *
 * @param sides how many flats, {@value #FEWEST} to {@value #MOST}
 */
public record Polygon(int sides) {
    /** The fewest flats that close a shape. */
    public static final int FEWEST = 3;

    /** More flats than anyone mills. */
    public static final int MOST = 100;

    public static final Polygon SQUARE = new Polygon(4);
    public static final Polygon HEXAGON = new Polygon(6);
    public static final Polygon OCTAGON = new Polygon(8);

    public Polygon {
        if (sides < FEWEST || sides > MOST) {
            throw new IllegalArgumentException("a shape has " + FEWEST + " to " + MOST + " flats, not " + sides);
        }
    }

    /** Across corners of a shape so much across flats. */
    public Length corners(Length flats) {
        return flats.times(1 / half().cos());
    }

    /** Across flats of a shape so much across corners; also the largest across flats that a round bar gives. */
    public Length flats(Length corners) {
        return corners.times(half().cos());
    }

    /** How deep each flat is cut below the round. */
    public Length depthOfCut(Length round, Length flats) {
        return round.minus(flats).half();
    }

    /** How wide a flat is that is cut on round bar thinner than the corners; the corners then stay round. */
    public Length flatWidth(Length round, Length flats) {
        double wide = Math.sqrt(Math.max(0, round.mm() * round.mm() - flats.mm() * flats.mm()));
        Length chord = Length.mm(wide);
        return Length.least(chord, flats.times(half().tan()));
    }

    /** What a calliper reads from a flat to the corner opposite, for an odd number of flats. */
    public Length overFlatAndCorner(Length flats) {
        return flats.plus(corners(flats)).half();
    }

    /** How far the work is turned from one flat to the next. */
    public Angle turn() {
        return half().times(2);
    }

    public boolean hasOppositeFlats() {
        return sides % 2 == 0;
    }

    /** What the shape is called. */
    public String title() {
        return switch (sides) {
            case 3 -> "triangle";
            case 4 -> "square";
            case 5 -> "pentagon";
            case 6 -> "hexagon";
            case 8 -> "octagon";
            default -> String.format(Locale.ROOT, "%d flats", sides);
        };
    }

    private Angle half() {
        return Angle.degrees(180.0 / sides);
    }
}
