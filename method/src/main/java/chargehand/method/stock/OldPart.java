package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Shape;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import chargehand.trade.material.Materials;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A part that comes back to be altered is its own stock: no piece on the rack is asked, and nothing is cut off. */
final class OldPart {
    private static final String NAME = "old part";
    private static final Allowances NONE = new Allowances(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);

    /** No more than this is lifted into a lathe by one person (common practice). */
    private static final double HEAVY_KG = 20;

    private static final double CUBIC_MM_IN_M3 = 1e9;

    private final Part part;
    private final Body.Turned came;

    private OldPart(Part part, Body.Turned came) {
        this.part = part;
        this.came = came;
    }

    /** The old part alone; nothing for a part that is made from stock. */
    static Optional<Candidates> candidates(Part part) {
        return part.body() instanceof Body.Turned turned
                ? turned.asItCame().map(came -> new Candidates(List.of(new OldPart(part, came).candidate()), List.of()))
                : Optional.empty();
    }

    private Candidate candidate() {
        Length length = came.length();
        Length across = came.largestDiameter();
        var working = new Working();
        working.fact(
                "The old part is its own stock",
                "begun as it came, nothing sawn off or faced but what the drawing asks",
                Source.COMMON_PRACTICE);
        working.caution("Measure the old part before the first cut: what is there must be as the drawing has it.");
        weight().filter(kilograms -> kilograms > HEAVY_KG)
                .ifPresent(kilograms -> working.caution(String.format(
                        Locale.ROOT,
                        "It weighs about %.0f kg: lift it with a second person or a sling, and lay a board over the bed.",
                        kilograms)));
        return new Candidate(
                piece(length, across),
                new Raw.Round(across),
                false,
                Candidate.Match.SAME,
                Way.AS_IT_CAME,
                NONE,
                new Yield(1, 1, length, length, Length.ZERO, 0, Optional.empty()),
                working.steps(),
                working.cautions());
    }

    private Optional<Double> weight() {
        return Materials.find(part.material())
                .map(material -> material.physical().kilogramsPerCubicMetre()
                        * Solid.of(came).volume().cubicMm()
                        / CUBIC_MM_IN_M3);
    }

    private Piece piece(Length length, Length across) {
        LengthUnit unit = part.unit();
        return new Piece(
                NAME,
                "as it came with the job",
                part.material(),
                Piece.Sureness.TAKEN_FOR,
                new Shape.Round(Written.of(across, unit)),
                Written.of(length, unit),
                1,
                Piece.Condition.RECLAIMED,
                Optional.empty(),
                "");
    }
}
