package chargehand.part;

import java.util.List;

/**
 * How a part's drawing is made out, which is nothing of the part's shape.
 *
 * @param projection how its views stand
 * @param issues its issues, the first one first; none where no table is kept
 * @param lengths what is wanted of single lengths, at most one wish for each
 */
public record Drafting(Projection projection, List<DrawingIssue> issues, List<LengthWish> lengths) {
    /** What holds where a file says nothing: first angle, no table of issues, lengths as the rules choose them. */
    public static final Drafting USUAL = new Drafting(Projection.FIRST_ANGLE, List.of());

    public Drafting {
        issues = List.copyOf(issues);
        lengths = List.copyOf(lengths);
    }

    /** A drawing whose lengths are all chosen and stacked by the rules. */
    public Drafting(Projection projection, List<DrawingIssue> issues) {
        this(projection, issues, List.of());
    }

    /** The same with other wishes. */
    public Drafting with(List<LengthWish> others) {
        return new Drafting(projection, issues, others);
    }
}
