package chargehand.measure;

/**
 * An area.
 *
 * @param squareMm the area (mm²), finite
 */
public record Area(double squareMm) implements Comparable<Area> {
    /** 25.4 mm squared, exactly. */
    private static final double MM2_PER_IN2 = 645.16;

    public Area {
        Finite.number("area", squareMm);
    }

    public static Area squareMm(double squareMm) {
        return new Area(squareMm);
    }

    public static Area squareInches(double squareInches) {
        return new Area(squareInches * MM2_PER_IN2);
    }

    public double squareInches() {
        return squareMm / MM2_PER_IN2;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMm, other.squareMm);
    }
}
