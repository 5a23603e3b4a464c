package chargehand.part.testing;

import chargehand.part.Section;
import chargehand.part.Stretch;

/** Sections on other stretches. */
final class Stretches {
    private Stretches() {}

    /** The same section on another stretch. */
    static Section put(Section section, Stretch stretch) {
        return switch (section) {
            case Section.Round round -> new Section.Round(stretch, round.diameter());
            case Section.Groove groove -> new Section.Groove(stretch, groove.diameter());
            case Section.Cone cone -> new Section.Cone(stretch, cone.towardsA(), cone.towardsB(), cone.taper());
            case Section.Threaded threaded -> new Section.Threaded(stretch, threaded.thread(), threaded.fit());
            case Section.Polygon polygon ->
                new Section.Polygon(stretch, polygon.sides(), polygon.flats(), polygon.corners());
            case Section.Toothed wheel ->
                new Section.Toothed(stretch, wheel.teeth(), wheel.size(), wheel.pressureAngle(), wheel.outside());
            case Section.Curved curved ->
                new Section.Curved(stretch, curved.towardsA(), curved.towardsB(), curved.radius(), curved.bulge());
            case Section.Knurled knurled ->
                new Section.Knurled(stretch, knurled.diameter(), knurled.pattern(), knurled.pitch());
        };
    }
}
