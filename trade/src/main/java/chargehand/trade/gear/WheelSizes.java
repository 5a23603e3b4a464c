package chargehand.trade.gear;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import java.util.Optional;

/**
 * What the data table on the drawing of a spur wheel says of its teeth, full-depth ones.
 *
 * @param shift how far the cutter is drawn out, over the module; 0 where the outside is no larger than that of plain teeth
 * @param toothDepth from the full outside down to the root
 * @param thickness of a tooth along the pitch circle, with no backlash
 * @param span over how many teeth to measure, and the size; empty where no calliper's jaws touch the flanks
 * @param pins what pins to measure over, and the size; empty where none would rest on the flanks
 * @param cutter the number of the formed cutter, of the set of eight; empty where none is made for so few teeth
 */
public record WheelSizes(
        double shift,
        Length toothDepth,
        Length thickness,
        Optional<Span> span,
        Optional<Pins> pins,
        Optional<Integer> cutter) {
    /** The pins that are usual over outside teeth, over the module (from memory: Machinery's Handbook, 1.728). */
    private static final double PIN = 1.728;

    /** A shift below this is rounding of the outside. */
    private static final double NO_SHIFT = 1e-4;

    /** A size over so many teeth. */
    public record Span(int over, Length size) {}

    /** A size over two pins. */
    public record Pins(Length pin, Length size) {}

    /**
     * The sizes of a wheel.
     *
     * @param teeth at least 4
     * @param module pitch diameter over teeth (mm)
     * @param outside as drawn; larger than that of plain full-depth teeth where they are drawn out
     */
    public static WheelSizes of(int teeth, double module, Angle pressureAngle, Length outside) {
        ToothSystem system = ToothSystem.full(pressureAngle);
        double full = module * (teeth + 2 * system.addendum());
        double drawnOut = Math.max(0, (outside.mm() - full) / (2 * module));
        Spur spur = new Spur(teeth, module, pressureAngle, system, drawnOut < NO_SHIFT ? 0 : drawnOut);
        int over = spur.bestOver();
        double pin = PIN * module;
        return new WheelSizes(
                spur.shift(),
                Length.mm(spur.addendum() + spur.dedendum()),
                Length.mm(spur.circularThickness()),
                spur.spans(over) ? Optional.of(new Span(over, Length.mm(spur.span(over)))) : Optional.empty(),
                spur.takes(pin)
                        ? Optional.of(new Pins(Length.mm(pin), Length.mm(spur.overPins(pin))))
                        : Optional.empty(),
                Cutters.number(teeth));
    }
}
