package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.End;
import java.util.Optional;

/**
 * A stretch of the axis.
 *
 * @param from its end nearer A, less than {@code to}
 * @param to its end nearer B
 */
public record Span(Length from, Length to) {
    public Span {
        if (!from.isLessThan(to)) {
            throw new IllegalArgumentException("a stretch runs from less to more, not " + from + " to " + to);
        }
    }

    /** The stretch between two positions, whichever way round; nothing where they are the same. */
    static Optional<Span> between(Length one, Length other) {
        return one.equals(other)
                ? Optional.empty()
                : Optional.of(new Span(Length.least(one, other), Length.most(one, other)));
    }

    public Length length() {
        return to.minus(from);
    }

    /** The border of this stretch towards an end. */
    Length border(End end) {
        return end == End.A ? from : to;
    }

    Length middle() {
        return from.plus(length().half());
    }

    /** What this stretch and another have in common, if that is more than a point. */
    Optional<Span> common(Span other) {
        Length start = Length.most(from, other.from);
        Length end = Length.least(to, other.to);
        return start.isLessThan(end) ? Optional.of(new Span(start, end)) : Optional.empty();
    }

    boolean meets(Span other) {
        return common(other).isPresent();
    }

    /** Whether the other stretch lies within this one, give or take {@code tolerance} at its ends. */
    boolean holds(Span other, Length tolerance) {
        return !other.from.isLessThan(from.minus(tolerance)) && !other.to.isMoreThan(to.plus(tolerance));
    }

    boolean isWithin(Length tolerance, Span other) {
        return from.isWithin(tolerance, other.from) && to.isWithin(tolerance, other.to);
    }
}
