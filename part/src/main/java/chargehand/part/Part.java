package chargehand.part;

import chargehand.measure.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * What is to be made, everything settled: sizes read, threads known, limits resolved.
 *
 * @param title what it is called
 * @param drawing the drawing number, empty before it has one
 * @param issue the issue letter, such as "A"
 * @param unit the unit of the drawing
 * @param material as written, such as "gunmetal LG2"
 * @param duty what it must bear, in the asker's words, such as "steam, 250 psi"; empty when nothing special
 * @param general the general tolerance
 * @param texture the general surface texture, if the drawing gives one
 * @param body its shape
 * @param ties the features tied to each other
 * @param notes further notes for the drawing
 * @param drafting how its drawing is made out
 */
public record Part(
        String title,
        String drawing,
        String issue,
        LengthUnit unit,
        String material,
        String duty,
        GeneralTolerance general,
        Optional<Texture> texture,
        Body body,
        List<Tie> ties,
        List<String> notes,
        Drafting drafting) {
    public Part {
        ties = List.copyOf(ties);
        notes = List.copyOf(notes);
    }

    /** A part whose drawing is made out as usual. */
    public Part(
            String title,
            String drawing,
            String issue,
            LengthUnit unit,
            String material,
            String duty,
            GeneralTolerance general,
            Optional<Texture> texture,
            Body body,
            List<Tie> ties,
            List<String> notes) {
        this(title, drawing, issue, unit, material, duty, general, texture, body, ties, notes, Drafting.USUAL);
    }

    /** The same part with its drawing made out otherwise. */
    public Part with(Drafting other) {
        return new Part(title, drawing, issue, unit, material, duty, general, texture, body, ties, notes, other);
    }
}
