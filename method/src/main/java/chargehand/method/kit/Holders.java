package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import java.util.List;
import java.util.Optional;

/**
 * What a lathe holds and steadies work with.
 *
 * @param chucks each with a name of its own
 * @param collets sets of collets
 * @param faceplate the largest work it takes
 * @param tailstock every lathe here has one
 * @param largestDog the largest diameter its driving dogs take; empty where it has none
 * @param fixedSteady the diameters its fixed steady takes
 * @param travellingSteady the diameters its travelling steady takes
 */
public record Holders(
        List<Chuck> chucks,
        List<ColletSet> collets,
        Optional<Length> faceplate,
        Tailstock tailstock,
        Optional<Length> largestDog,
        Optional<Limits> fixedSteady,
        Optional<Limits> travellingSteady) {
    public Holders {
        chucks = List.copyOf(chucks);
        collets = List.copyOf(collets);
    }

    /**
     * The tailstock.
     *
     * @param travel how far its spindle comes out, and so how deep it drills at one setting
     * @param setOver how far it can be set over for taper turning
     * @param centre the centre it carries
     */
    public record Tailstock(Length travel, Length setOver, Centre centre) {}

    /** The kind of centre in the tailstock. */
    public enum Centre {
        /** Stands still and is greased; not for high speeds. */
        DEAD,
        /** Turns with the work. */
        REVOLVING
    }
}
