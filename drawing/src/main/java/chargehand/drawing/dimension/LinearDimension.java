package chargehand.drawing.dimension;

import chargehand.drawing.sign.Arrow;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;

/**
 * Draws a dimension line from one point to another with its arrows and its words above it, after the room there is:
 * everything between, or the words outside, or the arrows too.
 *
 * @param frame along the line, its origin at the line's beginning; words stand on its upper side
 * @param span from one end to the other (mm)
 * @param middle where the middle of words stands that fit between the ends, as a part of the span
 */
record LinearDimension(Local frame, double span, Wording wording, double middle) {
    LinearDimension(Local frame, double span, Wording wording) {
        this(frame, span, wording, 0.5);
    }

    /** From the line to the words (mm). */
    private static final double LIFT = 0.9;

    private static final double CLEAR = 1;

    /** A span in which words without arrows look better than arrows without words (mm). */
    private static final double LONG = 20;

    /** How far a line goes on outside to an arrow pointing in (mm). */
    private static final double TAIL = Arrow.LENGTH + 1.5;

    /** How much room a size needs to stand between its arrows (mm). */
    static double need(Wording wording) {
        return text(wording).width() + 2 * Arrow.LENGTH + 2;
    }

    private static Inscription text(Wording wording) {
        return new Inscription(wording, Placing.HEIGHT);
    }

    private Inscription text() {
        return text(wording);
    }

    /** Where words between the ends begin and end (mm along the line), if their middle stands at a part of the span. */
    double[] words(double part) {
        double half = text().width() / 2 + CLEAR;
        return new double[] {part * span - half, part * span + half};
    }

    /** How far words rise above the line (mm). */
    static double rise(Wording wording) {
        return LIFT + text(wording).descent() + text(wording).ascent();
    }

    /** Whether the arrows stand between the ends; words that fill a long span push them outside. */
    boolean arrowsFit() {
        return span >= need(wording) || (span >= 2 * Arrow.LENGTH + 1 && !fillsAlone());
    }

    private boolean fillsAlone() {
        return span >= LONG && span >= text().width() + CLEAR;
    }

    boolean wordsFit() {
        return span >= (arrowsFit() ? need(wording) : text().width() + CLEAR);
    }

    /** How far the drawing reaches before the line's beginning (mm). */
    double before(boolean wordsAfter) {
        return arrowsFit() && (wordsFit() || wordsAfter) ? 0 : wordsFit() || wordsAfter ? TAIL : outside();
    }

    /** How far the drawing reaches beyond the line's end (mm). */
    double after(boolean wordsAfter) {
        return before(!wordsAfter);
    }

    /** Words outside stand over an arrow there. */
    private double outside() {
        return Math.max(arrowsFit() ? 0 : TAIL, CLEAR + text().width() + CLEAR);
    }

    /** Where words outside begin and end, with a little air (mm along the line). */
    double[] outsideWords(boolean after) {
        double air = CLEAR / 2;
        double start = after ? span + CLEAR : -CLEAR - text().width();
        return new double[] {start - air, start + text().width() + air};
    }

    /** Draws it; words that do not fit between stand after the end or before the beginning. */
    void draw(Placing.Pen pen, boolean wordsAfter) {
        double from = arrowsFit() ? 0 : -TAIL;
        double to = arrowsFit() ? span : span + TAIL;
        double at = middle * span - text().width() / 2;
        if (!wordsFit()) {
            at = wordsAfter ? span + CLEAR : -CLEAR - text().width();
            from = wordsAfter ? from : Math.min(from, at - CLEAR);
            to = wordsAfter ? Math.max(to, at + text().width() + CLEAR) : to;
        }
        pen.line(Placing.Kind.DIMENSION, frame.at(from, 0), frame.at(to, 0));
        double out = frame.turned() + 180;
        pen.arrow(frame.at(0, 0), arrowsFit() ? out : frame.turned());
        pen.arrow(frame.at(span, 0), arrowsFit() ? frame.turned() : out);
        pen.label(text(), frame.moved(at, LIFT + text().descent()));
    }
}
