package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.End;

/**
 * The hollow of turned work as a tool finds it that comes along the axis.
 *
 * @param work as it stands
 * @param end from which the tool comes
 */
record Hollow(TurnedWork work, End end) {
    /** Length of a 118° drill's point over its diameter, and a little for safety. */
    private static final double POINT_OF_DIAMETER = 0.32;

    /** Whether the work ends at or before a position, coming from this end: a tool that goes there comes out. */
    boolean comesOut(Length at) {
        Length far = work.face(end.other());
        return !end.other().distance(far, at).isNegative();
    }

    /** The least diameter all the way from the face to a position; 0 where there is metal across the axis. */
    Length least(Length to) {
        return Span.between(work.face(end), to)
                .filter(span -> span.border(end).equals(work.face(end)))
                .flatMap(span -> Carving.within(work.inner(), span))
                .map(hollow -> hollow.least(hollow.start(), hollow.end()).times(2))
                .orElse(Length.ZERO);
    }

    /** The hole that a boring bar enters: short of the bottom by the point of the drill that made it. */
    Length pilot(Length to, Length diameter) {
        if (comesOut(to)) {
            return least(to);
        }
        Length shortOf = end.from(to, diameter.times(POINT_OF_DIAMETER));
        Length face = work.face(end);
        return end.other().distance(face, shortOf).isPositive() ? least(shortOf) : work.mouth(end);
    }

    /** Whether metal across the axis is left before a position, but for so much of the way. */
    boolean reaches(Length to, Length shortBy) {
        Length near = end.from(to, shortBy);
        return !end.other().distance(work.face(end), near).isPositive()
                ? work.mouth(end).isPositive()
                : least(near).isPositive();
    }
}
