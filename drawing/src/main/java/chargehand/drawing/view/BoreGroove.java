package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.InBore;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;

/**
 * A keyway or an oil groove along a bore, and how far it goes.
 *
 * @param feature which, never a recess, since that goes all round
 * @param radius of the bore
 * @param depth of its floor from the wall of the bore, at the middle of its width
 * @param width across
 * @param from where it begins, from end A
 * @param to where it ends
 */
public record BoreGroove(InBore feature, Length radius, Length depth, Length width, Length from, Length to) {
    /** Two radii nearer than this are one: rounding of half diameters. */
    private static final Length SAME = new Length(2);

    /** The features of a look that are grooves along bores. */
    static List<InBore> grooves(Look look) {
        return look.body().stream()
                .flatMap(body -> body.inBores().stream())
                .filter(feature -> !(feature instanceof InBore.Recess))
                .toList();
    }

    /** The grooves along the bores of a part. */
    public static List<BoreGroove> of(Body.Turned body, Solid solid) {
        return body.inBores().stream()
                .filter(feature -> !(feature instanceof InBore.Recess))
                .map(feature -> of(feature, body, solid))
                .toList();
    }

    private static BoreGroove of(InBore feature, Body.Turned body, Solid solid) {
        Bore bore = body.inside().stream()
                .filter(other -> other.name().equals(feature.bore()))
                .findFirst()
                .orElseThrow();
        Length radius = Solid.mouthDiameter(bore).half();
        return switch (feature) {
            case InBore.Keyway keyway ->
                whole(keyway, radius, keyway.depth().length(), keyway.width().length(), solid);
            case InBore.OilGroove groove -> {
                BoreGroove whole = whole(
                        groove, radius, groove.depth().length(), groove.width().length(), solid);
                yield switch (groove.run()) {
                    case InBore.Run.Open() -> whole;
                    case InBore.Run.Part(var from, var length) ->
                        whole.over(from.length(), from.length().plus(length.length()));
                };
            }
            case InBore.Recess recess ->
                throw new IllegalArgumentException("a recess goes all round: " + recess.name());
        };
    }

    private static BoreGroove whole(InBore feature, Length radius, Length depth, Length width, Solid solid) {
        Run run = Run.of(solid.innerAtMost(), radius, radius.plus(depth));
        return new BoreGroove(feature, radius, depth, width, run.from, run.to);
    }

    private BoreGroove over(Length first, Length last) {
        return new BoreGroove(feature, radius, depth, width, Length.most(first, from), Length.least(last, to));
    }

    /** A stretch of the hollow. */
    private record Run(Length from, Length to) {
        /** The stretch round the wall of a bore on which the hollow is no narrower than the bore, nor as wide as the floor. */
        static Run of(Profile hollow, Length radius, Length floor) {
            List<Station> stations = hollow.stations();
            int first = 0;
            while (first < stations.size() - 2 && !isWall(stations, first, radius)) {
                first++;
            }
            int last = first + 1;
            while (first > 0 && isOver(stations.get(first - 1), stations.get(first), radius, floor)) {
                first--;
            }
            while (last < stations.size() - 1 && isOver(stations.get(last), stations.get(last + 1), radius, floor)) {
                last++;
            }
            return new Run(stations.get(first).at(), stations.get(last).at());
        }

        private static boolean isWall(List<Station> stations, int index, Length radius) {
            Station here = stations.get(index);
            Station next = stations.get(index + 1);
            return here.radius().isWithin(SAME, radius)
                    && next.radius().isWithin(SAME, radius)
                    && here.at().isLessThan(next.at());
        }

        private static boolean isOver(Station one, Station other, Length radius, Length floor) {
            Length least = Length.least(one.radius(), other.radius());
            Length most = Length.most(one.radius(), other.radius());
            return !least.isLessThan(radius.minus(SAME)) && most.isLessThan(floor);
        }
    }

    /** How far from the axis its floor lies. */
    public Length floor() {
        return radius.plus(depth);
    }

    /** Its angle round the axis (degrees, 0 up). */
    public double around() {
        return around(feature);
    }

    static double around(InBore feature) {
        return switch (feature) {
            case InBore.Keyway keyway -> keyway.around().degrees();
            case InBore.OilGroove groove -> groove.around().degrees();
            case InBore.Recess recess -> 0;
        };
    }

    /** Whether it comes out at an end of the part. */
    public boolean opensAt(Length end) {
        return from.equals(end) || to.equals(end);
    }
}
