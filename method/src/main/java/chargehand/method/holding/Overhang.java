package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.task.Shape;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.Section;

/**
 * How far work stands out, and how slender that stretch is: length over diameter added up section by section, with each
 * section's finished diameter, so that a thin end counts for more than a thick one. For a plain bar it is the L/D every
 * turner knows.
 *
 * @param length from the jaws to the end of the work
 * @param slenderness the sum, a plain number
 */
record Overhang(Length length, double slenderness) {

    static Overhang of(Standing work, GripPlace place) {
        return between(work, place.jawFront(), work.face(place.headstock().other()));
    }

    /** The stretch between two places along the axis, in either order. */
    static Overhang between(Standing work, Length front, Length end) {
        Shape shape = work.shape();
        double sum = 0;
        Length covered = Length.ZERO;
        for (int i = 0; i < shape.count(); i++) {
            Length part = overlap(shape.start(i), shape.end(i), front, end);
            covered = covered.plus(part);
            sum += part.over(thickness(shape, i));
        }
        Length whole = front.minus(end).abs();
        Length rest = Length.most(Length.ZERO, whole.minus(covered));
        return new Overhang(whole, sum + rest.over(Blanks.swing(work.blank())));
    }

    /** The farthest place from the jaws, along the axis, out to which the work is no more slender than {@code most}. */
    static Length stiffTo(Standing work, GripPlace place, double most) {
        End free = place.headstock().other();
        Shape shape = work.shape();
        Length at = place.jawFront();
        double left = most;
        for (int i = free == End.A ? shape.count() - 1 : 0; shape.isSection(i); i = shape.neighbour(i, free)) {
            Length border = shape.border(i, free);
            Length part = free.distance(at, border);
            if (part.isPositive()) {
                Length thickness = thickness(shape, i);
                double slender = part.over(thickness);
                if (slender > left) {
                    return free.from(at, thickness.times(left));
                }
                left -= slender;
                at = border;
            }
        }
        return work.face(free);
    }

    /** A groove is too short to bend: it counts with its thicker neighbour. */
    private static Length thickness(Shape shape, int index) {
        if (!(shape.section(index) instanceof Section.Groove)) {
            return Length.least(
                    shape.section(index).diameterTowardsA(),
                    shape.section(index).diameterTowardsB());
        }
        Length thickest = shape.diameter(index);
        for (End side : End.values()) {
            int neighbour = shape.neighbour(index, side);
            if (shape.isSection(neighbour)) {
                thickest = Length.most(thickest, shape.diameter(neighbour));
            }
        }
        return thickest;
    }

    private static Length overlap(Length from, Length to, Length one, Length other) {
        Length low = Length.most(from, Length.least(one, other));
        Length high = Length.least(to, Length.most(one, other));
        return Length.most(Length.ZERO, high.minus(low));
    }
}
