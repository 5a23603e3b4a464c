package chargehand.drawing.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Draws stacked lengths along one side of a view.
 *
 * @param rail the side
 * @param outline how far out the view reaches there (mm)
 * @param reach how far out what a length runs from reaches, at a place along the side (mm)
 */
record LengthStack(Rail rail, double outline, DoubleUnaryOperator reach) {
    /** From the outline to the first line and from line to line (mm). */
    static final double FIRST = 10;

    static final double NEXT = 8;

    /** From what is measured to its extension line (mm). */
    static final double GAP = 1;

    /** How far an extension line goes beyond the dimension line (mm). */
    static final double OVERSHOOT = 2;

    private static final double CLEAR_OF_WORDS = 0.6;

    /** More tiers than this are hard to read. */
    private static final int MANY = 6;

    /** What a tier more than that costs, in the measure of crossings. */
    private static final double PER_TIER_TOO_MANY = 30;

    /**
     * Stacks lengths and draws them: each in a tier of its own, or, where that would run through something or become too high,
     * those from one face on one line outermost.
     *
     * @param clear further places that words outside a length should keep away from
     */
    List<Placing> draw(List<Span> spans, List<Double> clear) {
        return running(spans)
                .map(running -> draw(running, spans, clear))
                .orElseGet(() -> drawn(Tiers.of(spans, clear, List.of()), List.of()));
    }

    private List<Placing> draw(RunningLengths running, List<Span> spans, List<Double> clear) {
        List<Tiered> inner = Tiers.of(running.others(spans), clear, running.ends());
        List<Placing> placed = new ArrayList<>(drawn(inner, running.ends()));
        placed.addAll(running.draw(this, outline + FIRST + pitch(inner) * tiers(inner)));
        return placed;
    }

    /** The lengths that stand better on one line, if any do. */
    private static Optional<RunningLengths> running(List<Span> spans) {
        double stacked = stacked(spans);
        return stacked == 0 || spans.stream().anyMatch(span -> span.rank() != 0)
                ? Optional.empty()
                : RunningLengths.among(spans).filter(running -> running(running, spans) < stacked);
    }

    private static double stacked(List<Span> spans) {
        List<Tiered> stack = Tiers.of(spans, List.of(), List.of());
        return Tiers.crossings(stack, List.of()) + PER_TIER_TOO_MANY * Math.max(0, tiers(stack) - MANY);
    }

    private static double running(RunningLengths running, List<Span> spans) {
        List<Tiered> inner = Tiers.of(running.others(spans), List.of(), running.ends());
        return Tiers.crossings(inner, running.ends());
    }

    /** How badly lengths lie, drawn the better way. */
    static double crossings(List<Span> spans) {
        double stacked = stacked(spans);
        return running(spans)
                .map(running -> Math.min(stacked, running(running, spans)))
                .orElse(stacked);
    }

    private static int tiers(List<Tiered> stack) {
        return stack.stream().mapToInt(one -> one.tier() + 1).max().orElse(0);
    }

    private static double pitch(List<Tiered> stack) {
        return stack.stream()
                .mapToDouble(one -> LinearDimension.rise(one.span().wording()) + OVERSHOOT + CLEAR_OF_WORDS)
                .reduce(NEXT, Math::max);
    }

    private List<Placing> drawn(List<Tiered> stack, List<Double> beyond) {
        double pitch = pitch(stack);
        return stack.stream()
                .map(one -> draw(one, outline + FIRST + pitch * one.tier(), Tiers.passing(one, stack, beyond)))
                .toList();
    }

    private Placing draw(Tiered one, double out, List<Double> passing) {
        Placing.Pen pen = Placing.pen();
        extension(pen, one.span().from(), out);
        extension(pen, one.span().to(), out);
        new LinearDimension(
                        rail.frame(one.span().from(), out),
                        one.span().length(),
                        one.span().wording(),
                        one.middle(passing))
                .draw(pen, one.wordsAfter());
        return pen.at(0);
    }

    void extension(Placing.Pen pen, double along, double out) {
        pen.line(
                Placing.Kind.EXTENSION,
                rail.at(along, reach.applyAsDouble(along) + GAP),
                rail.at(along, out + OVERSHOOT));
    }
}
