package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import java.util.List;

/**
 * A length in its tier.
 *
 * @param tier counted from 0 at the view
 * @param wordsAfter whether words that do not fit between its ends stand after it rather than before
 * @param left where its line begins on paper, with arrows and words outside
 * @param right where its line ends
 */
record Tiered(Span span, int tier, boolean wordsAfter, double left, double right) {
    /** Room between two lengths in one tier (mm). */
    private static final double CLEAR = 3;

    private static final double SAME = 1e-6;

    /** Where the middle of words may stand that fit, as parts of the span, best first. */
    private static final List<Double> MIDDLES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78);

    static Tiered of(Span span, int tier, boolean wordsAfter) {
        LinearDimension line = line(span, 0.5);
        return new Tiered(
                span, tier, wordsAfter, span.from() - line.before(wordsAfter), span.to() + line.after(wordsAfter));
    }

    private static LinearDimension line(Span span, double middle) {
        return new LinearDimension(Local.at(new Point(0, 0)), span.length(), span.wording(), middle);
    }

    /** Whether both cannot stand in one tier; they can where one goes on from the other. */
    boolean clashes(Tiered other) {
        return tier == other.tier
                && left - CLEAR < other.right
                && other.left - CLEAR < right
                && !(Math.abs(left - other.right) < SAME || Math.abs(right - other.left) < SAME);
    }

    /** Whether an extension line at x that goes past this tier runs through the line away from its own ends. */
    boolean isCrossedAt(double x) {
        return x > left + SAME
                && x < right - SAME
                && Math.abs(x - span.from()) > SAME
                && Math.abs(x - span.to()) > SAME;
    }

    /** Whether an extension line at x that goes past this tier must run through its words. */
    boolean isStruckAt(List<Double> passing) {
        if (!line(span, 0.5).wordsFit()) {
            double[] words = line(span, 0.5).outsideWords(wordsAfter);
            return passing.stream().anyMatch(x -> x > span.from() + words[0] && x < span.from() + words[1]);
        }
        return MIDDLES.stream().noneMatch(part -> isFree(part, passing));
    }

    private boolean isFree(double part, List<Double> passing) {
        LinearDimension line = line(span, 0.5);
        double[] words = line.words(part);
        return words[0] >= 0
                && words[1] <= line.span()
                && passing.stream().noneMatch(x -> x > span.from() + words[0] && x < span.from() + words[1]);
    }

    /** Where the middle of its words stands clear of what passes, as a part of the span. */
    double middle(List<Double> passing) {
        return MIDDLES.stream()
                .filter(part -> isFree(part, passing))
                .findFirst()
                .orElse(0.5);
    }
}
