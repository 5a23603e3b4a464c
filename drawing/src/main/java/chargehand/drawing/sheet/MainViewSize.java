package chargehand.drawing.sheet;

import chargehand.drawing.picture.Box;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Section;
import java.util.function.Function;

/**
 * How far a part reaches in its main view when that is whole: reckoned from the part alone, so that a drawing can be held to
 * it.
 *
 * @param length from end A or the left side on, to the right
 * @param above the axis or the lower side
 * @param below the axis or the lower side
 */
public record MainViewSize(Length length, Length above, Length below) {
    /** The size of a turned part round its axis, or of a block seen from the front. */
    public static MainViewSize of(Body body) {
        return switch (body) {
            case Body.Turned turned ->
                new MainViewSize(
                        turned.length(),
                        most(turned, section -> reach(section, true)),
                        most(turned, section -> reach(section, false)));
            case Body.Block block ->
                new MainViewSize(block.length().length(), block.thickness().length(), Length.ZERO);
        };
    }

    private static Length most(Body.Turned turned, Function<Section, Length> reach) {
        return turned.outside().stream().map(reach).reduce(Length.ZERO, Length::most);
    }

    /** A polygon lies with a flat on top where its sides divide by four, else with a corner; an odd one has a flat below. */
    private static Length reach(Section section, boolean above) {
        if (section instanceof Section.Polygon polygon) {
            boolean flat = polygon.sides() % 4 == 0 || (polygon.sides() % 2 == 1 && !above);
            return (flat ? polygon.flats().length() : polygon.corners()).half();
        }
        return Length.most(section.diameterTowardsA(), section.diameterTowardsB())
                .half();
    }

    /** As a box in millimetres round the origin, y down. */
    public Box box() {
        return new Box(0, -above.mm(), length.mm(), below.mm());
    }
}
