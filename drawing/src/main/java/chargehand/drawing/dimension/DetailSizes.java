package chargehand.drawing.dimension;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Detail;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;

/** A groove shown larger, with its width and a title; and the ring with its letter that marks it in the whole view. */
public final class DetailSizes {
    private static final double TITLE = 5;
    private static final double LETTER = 5;

    /** From the circle to its title, and from a ring to its letter (mm). */
    private static final double CLEAR = 2;

    /** From the circle to the dimension line (mm). */
    private static final double FIRST = 6;

    /** A ring is no smaller than this (mm). */
    private static final double LEAST_RING = 3.5;

    private static final List<Integer> AROUND = List.of(60, 120, 45, 135, 75, 105, 30, 150, 300, 240);
    private static final List<Double> OUT = List.of(0.0, 4.0, 8.0, 13.0);

    private DetailSizes() {}

    /**
     * The larger view.
     *
     * @param scaleText its scale as it is printed
     */
    public static Dimensioned of(Body.Turned body, SizeText text, SmallGrooves.Enlarged enlarged, String scaleText) {
        View view = enlarged.detail().view();
        List<Placing> placed = new ArrayList<>(width(body, text, enlarged));
        placed.add(title(enlarged, scaleText));
        return new Dimensioned(view, placed, List.of());
    }

    private static List<Placing> width(Body.Turned body, SizeText text, SmallGrooves.Enlarged enlarged) {
        Detail detail = enlarged.detail();
        AxialScale scale = detail.enlarged().scale();
        int index = enlarged.sections().getFirst();
        Section groove = body.outside().get(index);
        Wording size = text.size(groove.stretch().length());
        int count = enlarged.sections().size();
        Wording wording = count > 1 ? Wording.of(count + "× ").then(size) : size;
        Length from = body.start(index);
        Length to = body.start(index + 1);
        double top = -(detail.place().y() - detail.radius());
        double left = start(detail, scale.x(from), body.outside().get(index - 1).diameterTowardsB());
        double right = start(detail, scale.x(to), body.outside().get(index + 1).diameterTowardsA());
        LengthStack stack = new LengthStack(
                Rail.level(Side.ABOVE),
                top + FIRST - LengthStack.FIRST,
                x -> x < scale.x(from.plus(to).half()) ? left : right);
        return stack.draw(List.of(new Span(scale.x(from), scale.x(to), wording)), List.of());
    }

    /** How far from the axis a wall ends that is shown: at its corner or at the circle. */
    private static double start(Detail detail, double x, Length diameter) {
        double across = detail.place().x() - x;
        double circle =
                -detail.place().y() + Math.sqrt(Math.max(0, detail.radius() * detail.radius() - across * across));
        return Math.min(circle, detail.enlarged().scale().size(diameter) / 2);
    }

    private static Placing title(SmallGrooves.Enlarged enlarged, String scaleText) {
        Detail detail = enlarged.detail();
        Inscription title = new Inscription(Wording.of(enlarged.letter() + "  " + scaleText), TITLE);
        double base = detail.place().y() + detail.radius() + CLEAR + title.ascent();
        return Placing.pen()
                .label(title, Local.at(new Point(detail.place().x() - title.width() / 2, base)))
                .at(0);
    }

    /** The ways to mark a place in the whole view: a ring, and a letter near it. */
    static List<List<Placing>> rings(Subject subject, SmallGrooves.Enlarged enlarged) {
        List<List<Placing>> all = new ArrayList<>();
        for (int index : enlarged.sections()) {
            Length middle = subject.body()
                    .start(index)
                    .plus(subject.body().outside().get(index).length().half());
            Point place = new Point(
                    subject.x(middle), enlarged.detail().placeInWhole().y());
            double radius = Math.max(LEAST_RING, enlarged.detail().radiusInWhole());
            all.add(ring(place, radius, enlarged.letter()));
        }
        return all;
    }

    private static List<Placing> ring(Point place, double radius, String letter) {
        Inscription words = new Inscription(Wording.of(letter), LETTER);
        List<Placing> ways = new ArrayList<>();
        for (double out : OUT) {
            for (int angle : AROUND) {
                Point near = place.towards(angle, radius + out + CLEAR + LETTER / 2);
                Local frame = Local.at(near.moved(-words.width() / 2, words.ascent() / 2));
                Placing.Pen pen = Placing.pen().sign(new Mark.Circle(LineStyle.NARROW, Ink.INK, place, radius));
                if (out > 0) {
                    pen.line(Placing.Kind.LEADER, place.towards(angle, radius), place.towards(angle, radius + out));
                }
                pen.label(words, frame);
                ways.add(pen.at(out + AROUND.indexOf(angle) * 0.5));
            }
        }
        return ways;
    }
}
