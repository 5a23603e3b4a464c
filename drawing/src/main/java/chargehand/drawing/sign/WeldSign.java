package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A weld on the arrow's side after ISO 2553, system A: the sign stands on a continuous reference line with a dashed one below
 * it; the size stands to its left, what else is to be said in a fork at the end. Proportions are from memory.
 *
 * @param shape of the weld
 * @param size as lettered before it, such as {@code z5} or {@code s8}; empty where the drawing of the edges says it
 * @param tail what stands in the fork, such as {@code 135}; empty for no fork
 * @param allRound whether it goes all round: a circle where the leader meets the line
 * @param leaderLeft whether the leader meets the line at its left end, the fork being at its right one
 * @param height of the lettering (mm)
 */
public record WeldSign(Shape shape, String size, String tail, boolean allRound, boolean leaderLeft, double height)
        implements Label {
    /** From the end of a leader to what stands at it (mm): the reference line goes on over it. */
    private static final double TO_LEADER = 1;

    /** From what stands at a leader to its bend (mm). */
    private static final double TO_BEND = 4;

    /** From the continuous line to the dashed one, in lettering heights. */
    private static final double DASHED = 0.45;

    /** The height of a sign, in lettering heights. */
    private static final double HIGH = 1.4;

    private static final double GAP = 0.4;
    private static final double FORK = 0.9;

    /** The shapes of welds. */
    public enum Shape {
        FILLET,
        SQUARE_BUTT,
        SINGLE_V,
        SINGLE_BEVEL,
        SINGLE_U,
        SINGLE_J
    }

    private Lettering lettering() {
        return Lettering.height(height);
    }

    private double before() {
        return GAP * height + (size.isEmpty() ? 0 : lettering().width(size) + GAP * height);
    }

    private double sign() {
        return switch (shape) {
            case FILLET, SINGLE_BEVEL, SINGLE_J, SINGLE_U -> HIGH * height;
            case SQUARE_BUTT -> 0.5 * height;
            case SINGLE_V -> 2 * HIGH * height * Math.tan(Math.toRadians(30));
        };
    }

    private double line() {
        return before() + sign() + 2 * GAP * height;
    }

    @Override
    public Label reached(boolean fromLeft) {
        return new WeldSign(shape, size, tail, allRound, fromLeft, height);
    }

    private double fork() {
        return tail.isEmpty() ? 0 : FORK * height + lettering().width(tail);
    }

    @Override
    public double width() {
        return line() + fork();
    }

    /** The reference line lies where a leader meets a label: half-way between ascent and descent. */
    @Override
    public double ascent() {
        return 0.5 * height + (HIGH + 0.1) * height;
    }

    @Override
    public double descent() {
        return (HIGH + 0.1) * height - 0.5 * height;
    }

    @Override
    public List<Mark> marks(Local frame) {
        Local base = frame.moved(leaderLeft ? 0 : fork(), (ascent() - descent()) / 2);
        double from = leaderLeft ? -TO_LEADER : 0;
        double to = leaderLeft ? line() : line() + TO_LEADER;
        List<Mark> marks = new ArrayList<>();
        marks.add(narrow(base, from, 0, to, 0));
        double low = -DASHED * height;
        marks.add(new Mark.Line(LineStyle.HIDDEN, Ink.INK, base.at(0, low), base.at(line(), low)));
        if (!size.isEmpty()) {
            marks.add(Wording.words(base, GAP * height, 0.3 * height, lettering(), size, Ink.INK));
        }
        marks.addAll(sign(base.moved(before(), 0)));
        if (allRound) {
            Point bend = base.at(leaderLeft ? -TO_BEND : line() + TO_BEND, 0);
            marks.add(new Mark.Circle(LineStyle.NARROW, Ink.INK, bend, 0.4 * height));
        }
        tail(base, marks);
        return marks;
    }

    private void tail(Local base, List<Mark> marks) {
        if (!tail.isEmpty()) {
            double end = leaderLeft ? line() : 0;
            double out = leaderLeft ? 0.6 * height : -0.6 * height;
            marks.add(narrow(base, end, 0, end + out, 0.6 * height));
            marks.add(narrow(base, end, 0, end + out, -0.6 * height));
            double words = leaderLeft ? line() + FORK * height : -fork();
            marks.add(Wording.words(base, words, -0.5 * height, lettering(), tail, Ink.INK));
        }
    }

    private List<Mark> sign(Local base) {
        double w = sign();
        double h = HIGH * height;
        return switch (shape) {
            case FILLET -> List.of(symbol(base, 0, 0, 0, h, w, 0));
            case SQUARE_BUTT -> List.of(symbol(base, 0, 0, 0, h), symbol(base, w, 0, w, h));
            case SINGLE_V -> List.of(symbol(base, 0, h, w / 2, 0, w, h));
            case SINGLE_BEVEL -> List.of(symbol(base, 0, h, 0, 0), symbol(base, 0, 0, h, h));
            case SINGLE_U -> List.of(symbol(base, w / 2, 0, w / 2, 0.4 * h), cup(base, w, 2));
            case SINGLE_J -> List.of(symbol(base, 0, 0, 0, h), cup(base.moved(-w / 2, 0), w, 1));
        };
    }

    /** The bowl of a U, or the right half of it. */
    private Mark cup(Local base, double wide, int halves) {
        double[] places = new double[2 * 5 * halves - (halves == 2 ? 2 : 0)];
        int first = halves == 2 ? -4 : 0;
        for (int i = 0; i < places.length / 2; i++) {
            double turn = Math.toRadians(90 * (first + i) / 4.0);
            places[2 * i] = wide / 2 + wide / 2 * Math.sin(turn);
            places[2 * i + 1] = HIGH * height - (HIGH * height * 0.6) * Math.cos(turn);
        }
        return new Mark.Stroke(LineStyle.SYMBOL, Ink.INK, base.through(places));
    }

    private static Mark symbol(Local base, double... places) {
        return new Mark.Stroke(LineStyle.SYMBOL, Ink.INK, base.through(places));
    }

    private static Mark narrow(Local base, double x1, double y1, double x2, double y2) {
        return new Mark.Line(LineStyle.NARROW, Ink.INK, base.at(x1, y1), base.at(x2, y2));
    }

    @Override
    public String toString() {
        return ("weld " + size + " " + tail).strip();
    }
}
