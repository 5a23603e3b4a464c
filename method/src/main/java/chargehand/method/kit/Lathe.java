package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Power;

/**
 * A centre lathe.
 *
 * @param room how large the work may be
 * @param speeds of the spindle, back gear included, as on the plate
 * @param power at the spindle, after what the drive loses
 * @param feeds driven by the feed shaft
 * @param screwCutting what the leadscrew can be geared to
 * @param slides the dials, and how far the top slide travels
 * @param holders what the work can be held in and steadied by
 */
public record Lathe(
        String name,
        LengthUnit unit,
        Room room,
        Speeds speeds,
        Power power,
        Driven feeds,
        ScrewCutting screwCutting,
        Slides slides,
        Holders holders)
        implements Machine {
    /**
     * How large the work may be.
     *
     * @param overBed the largest diameter that turns over the bed
     * @param overSlide the largest diameter that turns over the cross slide, not more than {@code overBed}
     * @param betweenCentres the longest work between centres
     * @param spindleBore the largest bar that passes through the spindle
     */
    public record Room(Length overBed, Length overSlide, Length betweenCentres, Length spindleBore) {
        public Room {
            if (overSlide.isMoreThan(overBed)) {
                throw new IllegalArgumentException("swing over the slide cannot be more than over the bed");
            }
        }
    }

    /**
     * The driven feeds for each turn of the spindle.
     *
     * @param along sliding, towards the headstock
     * @param across surfacing; empty where the cross slide is fed by hand
     */
    public record Driven(Feeds along, Feeds across) {}

    /** What one division of the cross dial takes off the diameter. */
    public Length leastOffDiameter() {
        return slides.offDiameter(slides.cross().graduation());
    }
}
