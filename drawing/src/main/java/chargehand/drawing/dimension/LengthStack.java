package chargehand.drawing.dimension;

import java.util.List;
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

    List<Placing> draw(List<Tiered> stack) {
        double pitch = stack.stream()
                .mapToDouble(one -> LinearDimension.rise(one.span().wording()) + OVERSHOOT + CLEAR_OF_WORDS)
                .reduce(NEXT, Math::max);
        return stack.stream()
                .map(one -> draw(one, outline + FIRST + pitch * one.tier(), Tiers.passing(one, stack)))
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

    private void extension(Placing.Pen pen, double along, double out) {
        pen.line(
                Placing.Kind.EXTENSION,
                rail.at(along, reach.applyAsDouble(along) + GAP),
                rail.at(along, out + OVERSHOOT));
    }
}
