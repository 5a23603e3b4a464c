package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.Power;
import java.util.List;
import java.util.Optional;

/**
 * A milling machine.
 *
 * @param travels how far the table goes
 * @param speeds of the spindle
 * @param power at the spindle
 * @param feeds of the table for each minute; empty where it is fed by hand
 * @param dials of the table
 * @param vices each with a name of its own
 * @param vees the diameters its vee blocks take; empty where it has none
 * @param clamps the thickest work that its clamps and studs reach over on the table; empty where it has none
 * @param dividingHead with its own chuck, if there is one
 */
public record Mill(
        String name,
        LengthUnit unit,
        Travels travels,
        Speeds speeds,
        Power power,
        Feeds feeds,
        TableDials dials,
        List<Vice> vices,
        Optional<Limits> vees,
        Optional<Length> clamps,
        Optional<DividingHead> dividingHead)
        implements Machine {
    public Mill {
        vices = List.copyOf(vices);
    }

    /**
     * How far the table goes.
     *
     * @param along lengthwise (x)
     * @param across towards the column (y)
     * @param up between table and cutter (z)
     */
    public record Travels(Length along, Length across, Length up) {}

    /** The dials of the three table screws. */
    public record TableDials(Dial along, Dial across, Dial up) {}
}
