package chargehand.part;

import java.util.List;

/**
 * How a part's drawing is made out, which is nothing of the part's shape.
 *
 * @param projection how its views stand
 * @param issues its issues, the first one first; none where no table is kept
 */
public record Drafting(Projection projection, List<DrawingIssue> issues) {
    /** What holds where a file says nothing: first angle, no table of issues. */
    public static final Drafting USUAL = new Drafting(Projection.FIRST_ANGLE, List.of());

    public Drafting {
        issues = List.copyOf(issues);
    }
}
