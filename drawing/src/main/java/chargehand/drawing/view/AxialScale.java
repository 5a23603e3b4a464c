package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * Where a turned part's positions lie on paper: the scale, and the lengths left out of a broken view.
 *
 * @param scale paper over part: 0.5 for 1:2
 * @param gaps what is left out, in order from end A, not touching
 */
public record AxialScale(double scale, List<Gap> gaps) {
    /** The room between the two ends at a break (mm on paper). */
    public static final double BREAK = 3;

    public AxialScale {
        gaps = List.copyOf(gaps);
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a scale is more than zero, not " + scale);
        }
    }

    /** A stretch of the part that is not drawn. */
    public record Gap(Length from, Length to) {}

    public static AxialScale of(double scale) {
        return new AxialScale(scale, List.of());
    }

    /** Where a position along the axis lies (mm to the right of end A); within a gap, between its two ends. */
    public double x(Length at) {
        double left = 0;
        for (Gap gap : gaps) {
            Length within = Length.least(Length.most(at, gap.from()), gap.to()).minus(gap.from());
            double skipped = scale * within.mm();
            left += skipped - BREAK * within.over(gap.to().minus(gap.from()));
        }
        return scale * at.mm() - left;
    }

    /** The position that lies at x, if it is drawn: nothing within a break. */
    public Optional<Length> at(double x) {
        double left = x;
        for (Gap gap : gaps) {
            double from = x(gap.from());
            if (x > from && x < from + BREAK) {
                return Optional.empty();
            }
            if (x >= from + BREAK) {
                left += scale * gap.to().minus(gap.from()).mm() - BREAK;
            }
        }
        return Optional.of(Length.mm(left / scale));
    }

    /** A radius or any other size that no gap shortens (mm). */
    public double size(Length size) {
        return scale * size.mm();
    }

    /** A point above the axis at a radius. */
    public Point above(Length at, Length radius) {
        return new Point(x(at), -size(radius));
    }

    /** A point below the axis at a radius. */
    public Point below(Length at, Length radius) {
        return new Point(x(at), size(radius));
    }

    public Point onAxis(Length at) {
        return new Point(x(at), 0);
    }
}
