package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.InBore;
import chargehand.part.Size;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A keyway or an oil groove along a bore, and how far it goes.
 *
 * @param feature which, never a recess, since that goes all round
 * @param radius of the wall that it is cut in, as it is left
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

    /** The grooves along the bores of a part, those left out that later work has taken away. */
    public static List<BoreGroove> of(Body.Turned body, Solid solid) {
        List<BoreGroove> all = body.inBores().stream()
                .filter(feature -> !(feature instanceof InBore.Recess))
                .flatMap(feature -> of(feature, body, solid).stream())
                .toList();
        return all.stream()
                .filter(groove -> all.stream().noneMatch(groove::isWithin))
                .toList();
    }

    private static Optional<BoreGroove> of(InBore feature, Body.Turned body, Solid solid) {
        Bore bore = body.inside().stream()
                .filter(other -> other.name().equals(feature.bore()))
                .findFirst()
                .orElseThrow();
        Length radius = Solid.mouthDiameter(bore).half();
        return switch (feature) {
            case InBore.Keyway keyway -> whole(keyway, radius, Cross.of(keyway.depth(), keyway.width()), solid);
            case InBore.OilGroove groove ->
                whole(groove, radius, Cross.of(groove.depth(), groove.width()), solid)
                        .map(whole -> switch (groove.run()) {
                            case InBore.Run.Open() -> whole;
                            case InBore.Run.Part(var from, var length) ->
                                whole.over(from.length(), from.length().plus(length.length()));
                        });
            case InBore.Recess recess -> Optional.empty();
        };
    }

    /** The size of a groove across. */
    private record Cross(Length depth, Length width) {
        static Cross of(Size depth, Size width) {
            return new Cross(depth.length(), width.length());
        }
    }

    private static Optional<BoreGroove> whole(InBore feature, Length radius, Cross cross, Solid solid) {
        Length floor = radius.plus(cross.depth);
        return Run.of(solid.innerAtMost(), radius, floor)
                .map(run -> new BoreGroove(feature, run.wall, floor.minus(run.wall), cross.width, run.from, run.to));
    }

    private BoreGroove over(Length first, Length last) {
        return new BoreGroove(feature, radius, depth, width, Length.most(first, from), Length.least(last, to));
    }

    /** Whether another groove takes all of this one away. */
    private boolean isWithin(BoreGroove other) {
        return !other.equals(this)
                && Math.abs(Math.IEEEremainder(around() - other.around(), 360)) < 0.5
                && !width.isMoreThan(other.width)
                && !floor().isMoreThan(other.floor())
                && !from.isLessThan(other.from)
                && !to.isMoreThan(other.to);
    }

    /**
     * A stretch of the hollow.
     *
     * @param wall the least radius on it
     */
    private record Run(Length from, Length to, Length wall) {
        /**
         * The longest stretch on which the hollow is no narrower than a bore, nor as wide as the floor; none where later
         * work has taken it all away.
         */
        static Optional<Run> of(Profile hollow, Length radius, Length floor) {
            List<Station> stations = hollow.stations();
            List<Run> runs = new ArrayList<>();
            int first = 0;
            for (int i = 1; i < stations.size(); i++) {
                if (!isOver(stations.get(i - 1), stations.get(i), radius, floor)) {
                    add(hollow, first, i - 1, runs);
                    first = i;
                }
            }
            add(hollow, first, stations.size() - 1, runs);
            return runs.stream().max(Comparator.comparing(run -> run.to.minus(run.from)));
        }

        private static void add(Profile hollow, int first, int last, List<Run> runs) {
            Length from = hollow.stations().get(first).at();
            Length to = hollow.stations().get(last).at();
            if (from.isLessThan(to)) {
                Length wall = hollow.stations().subList(first, last + 1).stream()
                        .map(Station::radius)
                        .reduce(Length::least)
                        .orElseThrow();
                runs.add(new Run(from, to, wall));
            }
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
