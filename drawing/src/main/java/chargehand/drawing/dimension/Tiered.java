package chargehand.drawing.dimension;

import java.util.List;

/**
 * A length in its tier.
 *
 * @param tier counted from 0 at the view
 * @param wordsAfter whether words that do not fit between its ends stand after it rather than before
 */
record Tiered(Span span, int tier, boolean wordsAfter) {
    /** Room between two lengths in one tier (mm). */
    private static final double CLEAR = 3;

    private static final double SAME = 1e-6;

    /** Where its line begins on paper, with arrows and words outside. */
    double left() {
        return span.left(wordsAfter);
    }

    double right() {
        return span.right(wordsAfter);
    }

    /** Whether both cannot stand in one tier; they can where one goes on from the other. */
    boolean clashes(Tiered other) {
        return tier == other.tier
                && left() - CLEAR < other.right()
                && other.left() - CLEAR < right()
                && !(Math.abs(left() - other.right()) < SAME || Math.abs(right() - other.left()) < SAME);
    }

    /** Whether an extension line at x that goes past this tier runs through the line away from its own ends. */
    boolean isCrossedAt(double x) {
        return x > left() + SAME
                && x < right() - SAME
                && Math.abs(x - span.from()) > SAME
                && Math.abs(x - span.to()) > SAME;
    }

    /** Whether extension lines that go past this tier must run through its words. */
    boolean isStruckAt(List<Double> passing) {
        return span.isStruckAt(passing, wordsAfter);
    }

    /** Where the middle of its words stands clear of what passes, as a part of the span. */
    double middle(List<Double> passing) {
        return span.middle(passing);
    }
}
