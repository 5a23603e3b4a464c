package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.End;
import java.util.List;
import java.util.Optional;

/**
 * The metal that a hole along the axis meets, off the axis, as it is made from an end.
 *
 * @param from the nearer end of that metal to end A
 * @param to its nearer end to end B
 */
public record RingMetal(Length from, Length to) {
    /**
     * The first metal from an end that reaches out to a radius: a flange, or the whole part.
     *
     * @param outside what is left of the part once threads, teeth and flats are cut
     */
    public static Optional<RingMetal> find(Profile outside, End end, Length radius) {
        List<Segment> segments = outside.segments().stream()
                .filter(segment -> segment.from().at().isLessThan(segment.to().at()))
                .toList();
        return switch (end) {
            case A -> first(segments, radius);
            case B -> first(segments.reversed(), radius);
        };
    }

    private static Optional<RingMetal> first(List<Segment> segments, Length radius) {
        Optional<RingMetal> found = Optional.empty();
        for (Segment segment : segments) {
            boolean reaches = !segment.from().radius().isLessThan(radius)
                    && !segment.to().radius().isLessThan(radius);
            if (reaches) {
                found = Optional.of(found.map(metal -> metal.with(segment)).orElseGet(() -> of(segment)));
            } else if (found.isPresent()) {
                return found;
            }
        }
        return found;
    }

    private static RingMetal of(Segment segment) {
        return new RingMetal(segment.from().at(), segment.to().at());
    }

    private RingMetal with(Segment segment) {
        return new RingMetal(
                Length.least(from, segment.from().at()),
                Length.most(to, segment.to().at()));
    }

    /** How thick it is. */
    public Length thickness() {
        return to.minus(from);
    }

    /** The stretch that a hole of a depth takes of it from an end. */
    public RingMetal taken(End end, Length depth) {
        return switch (end) {
            case A -> new RingMetal(from, Length.least(to, from.plus(depth)));
            case B -> new RingMetal(Length.most(from, to.minus(depth)), to);
        };
    }
}
