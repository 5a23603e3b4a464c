package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.ArrayList;
import java.util.List;

/**
 * A frame of ISO 1101 for circular run-out: the sign, what is allowed, the letter of the datum. Its proportions (twice the
 * lettering height, strokes a tenth of it) are from memory of the standard.
 *
 * @param value what is allowed, as written
 * @param datum the letter of what it turns on
 * @param height of the lettering (mm)
 */
public record ToleranceFrame(String value, String datum, double height) implements Label {
    private Lettering lettering() {
        return Lettering.height(height);
    }

    private double side() {
        return 2 * height;
    }

    private double valueWidth() {
        return lettering().width(value) + height;
    }

    @Override
    public double width() {
        return 2 * side() + valueWidth();
    }

    @Override
    public double ascent() {
        return 1.5 * height;
    }

    @Override
    public double descent() {
        return 0.5 * height;
    }

    @Override
    public List<Mark> marks(Local frame) {
        double low = -descent();
        double high = ascent();
        double first = side();
        double second = first + valueWidth();
        List<Mark> marks = new ArrayList<>(runOut(frame));
        marks.add(
                new Mark.Stroke(LineStyle.SYMBOL, Ink.INK, frame.round(0, low, width(), low, width(), high, 0, high)));
        marks.add(new Mark.Line(LineStyle.SYMBOL, Ink.INK, frame.at(first, low), frame.at(first, high)));
        marks.add(new Mark.Line(LineStyle.SYMBOL, Ink.INK, frame.at(second, low), frame.at(second, high)));
        marks.add(Wording.words(frame, first + height / 2, 0, lettering(), value, Ink.INK));
        double middle = second + (side() - lettering().width(datum)) / 2;
        marks.add(Wording.words(frame, middle, 0, lettering(), datum, Ink.INK));
        return marks;
    }

    /** The sign of circular run-out: one arrow aslant. */
    private List<Mark> runOut(Local frame) {
        Local slanted = new Local(frame.at(0.55 * height, -0.1 * height), frame.turned() + 50);
        double length = 1.5 * height;
        return List.of(
                new Mark.Line(LineStyle.SYMBOL, Ink.INK, slanted.at(0, 0), slanted.at(length - 0.5 * height, 0)),
                new Mark.Fill(
                        Ink.INK,
                        slanted.round(
                                length,
                                0,
                                length - 0.7 * height,
                                0.16 * height,
                                length - 0.7 * height,
                                -0.16 * height)));
    }

    @Override
    public String toString() {
        return "run-out " + value + " to " + datum;
    }
}
