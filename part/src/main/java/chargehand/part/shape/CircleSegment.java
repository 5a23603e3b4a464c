package chargehand.part.shape;

import chargehand.measure.Length;

/** The part of a disc that lies beyond a flat. */
final class CircleSegment {
    private static final int SIMPSON_STEPS = 16;

    private CircleSegment() {}

    /** The area (mm²) of a disc beyond a straight line at this distance from its centre (both mm). */
    static double area(double radius, double flat) {
        if (radius <= flat) {
            return 0;
        }
        double half = Math.acos(flat / radius);
        return radius * radius * half - flat * Math.sqrt(radius * radius - flat * flat);
    }

    /** The volume (mm³) beyond a flat along a straight piece of a profile; exact where the radius does not change. */
    static double along(Segment segment, double flat) {
        double length = (double) (segment.to().z() - segment.from().z()) / Length.NM_PER_MM;
        double from = (double) segment.from().r() / Length.NM_PER_MM;
        double to = (double) segment.to().r() / Length.NM_PER_MM;
        double sum = 0;
        for (int i = 0; i <= SIMPSON_STEPS; i++) {
            int weight = i == 0 || i == SIMPSON_STEPS ? 1 : 2 + 2 * (i % 2);
            sum += weight * area(from + (to - from) * i / SIMPSON_STEPS, flat);
        }
        return length * sum / (3 * SIMPSON_STEPS);
    }
}
