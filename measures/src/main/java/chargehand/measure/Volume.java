package chargehand.measure;

/**
 * A volume.
 *
 * @param cubicMm the volume (mm³), finite
 */
public record Volume(double cubicMm) implements Comparable<Volume> {
    /** 25.4 mm cubed, exactly. */
    private static final double MM3_PER_IN3 = 16387.064;

    public Volume {
        Finite.number("volume", cubicMm);
    }

    public static Volume cubicMm(double cubicMm) {
        return new Volume(cubicMm);
    }

    public static Volume cubicInches(double cubicInches) {
        return new Volume(cubicInches * MM3_PER_IN3);
    }

    public double cubicInches() {
        return cubicMm / MM3_PER_IN3;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMm, other.cubicMm);
    }
}
