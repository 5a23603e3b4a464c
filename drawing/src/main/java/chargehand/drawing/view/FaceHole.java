package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.HoleCircle;
import chargehand.part.OnEnd;
import chargehand.part.shape.DrillPoint;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import chargehand.part.shape.ToolRoom;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holes along the axis on a circle, and where they begin and end.
 *
 * @param feature which
 * @param circle where they stand
 * @param diameter of a plain hole, or the minor diameter of a tapped one
 * @param thread of a tapped one
 * @param start the face they begin in
 * @param floor where their full diameter ends; for a tapped one its drilled hole's
 * @param threadEnd where full thread ends
 * @param through whether they come out again
 */
public record FaceHole(
        OnEnd.Holes feature,
        HoleCircle circle,
        Length diameter,
        Optional<ScrewThread> thread,
        Length start,
        Length floor,
        Length threadEnd,
        boolean through) {
    public static List<FaceHole> of(Body.Turned body, Solid solid) {
        return body.onEnds().stream()
                .filter(OnEnd.Holes.class::isInstance)
                .map(feature -> of((OnEnd.Holes) feature, solid))
                .toList();
    }

    private static FaceHole of(OnEnd.Holes feature, Solid solid) {
        return switch (feature) {
            case OnEnd.Drilled hole ->
                of(hole, hole.circle(), hole.depth(), hole.diameter().length(), Optional.empty(), solid);
            case OnEnd.Tapped hole ->
                of(hole, hole.circle(), hole.depth(), hole.thread().minorInternal(), Optional.of(hole.thread()), solid);
        };
    }

    private static FaceHole of(
            OnEnd.Holes feature,
            HoleCircle circle,
            Depth depth,
            Length diameter,
            Optional<ScrewThread> thread,
            Solid solid) {
        Metal metal = Metal.at(solid, circle.diameter().length().half(), feature.end());
        return switch (depth) {
            case Depth.Through() ->
                new FaceHole(feature, circle, diameter, thread, metal.start, metal.end, metal.end, true);
            case Depth.Blind(var size) -> {
                End inward = feature.end().other();
                Length full = inward.from(metal.start, size.length());
                Length room = thread.map(ToolRoom::forTap).orElse(Length.ZERO);
                yield new FaceHole(
                        feature, circle, diameter, thread, metal.start, inward.from(full, room), full, false);
            }
        };
    }

    /** The first metal that a line along the axis meets. */
    private record Metal(Length start, Length end) {
        static Metal at(Solid solid, Length radius, End from) {
            List<Length> places = Stream.concat(
                            solid.outer().stations().stream(), solid.innerAtMost().stations().stream())
                    .map(Station::at)
                    .distinct()
                    .sorted()
                    .toList();
            List<Length> seen = from == End.A ? places : places.reversed();
            int first = 0;
            while (first < seen.size() - 2 && !isMetal(solid, radius, seen, first)) {
                first++;
            }
            int last = first;
            while (last < seen.size() - 2 && isMetal(solid, radius, seen, last + 1)) {
                last++;
            }
            return new Metal(seen.get(first), seen.get(last + 1));
        }

        private static boolean isMetal(Solid solid, Length radius, List<Length> places, int index) {
            Length middle = places.get(index).plus(places.get(index + 1)).half();
            return solid.outer().radiusBefore(middle).isMoreThan(radius)
                    && solid.innerAtMost().radiusBefore(middle).isLessThan(radius);
        }
    }

    /** How far the point of the drill reaches beyond the floor; nothing for holes that go through. */
    Length tip() {
        return through ? Length.ZERO : DrillPoint.height(diameter);
    }

    /** The bearing of one of them before the part is turned. */
    public double bearing(int index) {
        return circle.around().degrees() + 360.0 * index / circle.count();
    }

    /** The way from the face into the metal: 1 to the right. */
    int inward() {
        return feature.end() == End.A ? 1 : -1;
    }
}
