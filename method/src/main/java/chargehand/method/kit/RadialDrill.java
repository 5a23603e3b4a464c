package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.Power;
import java.util.List;
import java.util.Optional;

/**
 * A radial or pillar drill.
 *
 * @param capacity the largest drill it drives in mild steel
 * @param speeds of the spindle
 * @param power at the spindle
 * @param feeds for each turn; empty where it is fed by hand
 * @param room where the spindle reaches
 * @param vices on its table
 * @param vees the diameters its vee blocks take; empty where it has none
 * @param clamps the thickest work that its clamps and studs reach over on the table; empty where it has none
 */
public record RadialDrill(
        String name,
        LengthUnit unit,
        Length capacity,
        Speeds speeds,
        Power power,
        Feeds feeds,
        Reach room,
        List<Vice> vices,
        Optional<Limits> vees,
        Optional<Length> clamps)
        implements Machine {
    public RadialDrill {
        vices = List.copyOf(vices);
    }

    /**
     * Where the spindle reaches.
     *
     * @param fromColumn farthest from column to spindle
     * @param underSpindle most room between table and spindle
     * @param quill how far the spindle feeds down, and so how deep it drills at one setting
     */
    public record Reach(Length fromColumn, Length underSpindle, Length quill) {}
}
