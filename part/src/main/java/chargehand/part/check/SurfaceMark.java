package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.shape.Profile;

/**
 * The mark that a feature leaves on the outside, as a rectangle.
 *
 * @param width across the axis
 * @param around the angle of its middle round the axis (degrees)
 * @param onBothSides whether there is another one over against it
 */
record SurfaceMark(Length from, Length to, Length width, double around, boolean onBothSides) {
    static SurfaceMark of(Across across, Profile outside) {
        return switch (across) {
            case Across.CrossHole hole ->
                new SurfaceMark(
                        hole.at().length().minus(hole.diameter().length().half()),
                        hole.at().length().plus(hole.diameter().length().half()),
                        hole.diameter().length(),
                        hole.around().degrees(),
                        hole.depth() instanceof Depth.Through);
            case Across.Keyway keyway ->
                new SurfaceMark(
                        keyway.from().length(),
                        keyway.from().length().plus(keyway.length().length()),
                        keyway.width().length(),
                        keyway.around().degrees(),
                        false);
            case Across.TaperPin pin ->
                new SurfaceMark(
                        pin.begins(), pin.ends(), pin.wide(), pin.around().degrees(), true);
            case Across.Slit slit ->
                new SurfaceMark(
                        slit.begins(),
                        slit.ends(),
                        slit.wide(),
                        slit.around().degrees(),
                        slit.walls() == Across.Walls.BOTH);
            case Across.Flat flat ->
                new SurfaceMark(
                        flat.begins(),
                        flat.ends(),
                        chord(flat, outside.most(within(flat.begins(), outside), within(flat.ends(), outside))),
                        flat.around().degrees(),
                        false);
        };
    }

    private static Length within(Length at, Profile outside) {
        return Length.most(outside.start(), Length.least(at, outside.end()));
    }

    /** How wide a flat is at the surface of stock of a radius; nothing where it does not reach it. */
    private static Length chord(Across.Flat flat, Length radius) {
        double height = flat.depth().height(radius).mm();
        return Length.mm(2 * Math.sqrt(Math.max(0, radius.mm() * radius.mm() - height * height)));
    }

    boolean isNear(SurfaceMark other, Profile outside) {
        Length from = Length.most(Length.most(this.from, other.from), outside.start());
        Length to = Length.least(Length.least(this.to, other.to), outside.end());
        if (from.isMoreThan(to.plus(WallCheck.LEAST_WALL))) {
            return false;
        }
        Length radius = outside.least(Length.least(from, to), Length.most(from, to));
        double room = angle(width, radius) + angle(other.width, radius) + angle(WallCheck.LEAST_WALL, radius) * 2;
        double apart = apart(around, other.around);
        boolean opposite = (onBothSides || other.onBothSides) && 180 - apart < room;
        return apart < room || opposite;
    }

    /** The angle (degrees) from the middle to the side of something so wide on this radius. */
    static double angle(Length width, Length radius) {
        return Math.toDegrees(Math.asin(Math.min(1, width.half().mm() / radius.mm())));
    }

    /** The angle (degrees, 0 to 180) between two directions. */
    static double apart(double one, double other) {
        double turned = Math.abs(one - other) % 360;
        return Math.min(turned, 360 - turned);
    }
}
