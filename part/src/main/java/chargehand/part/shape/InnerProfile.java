package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.trade.thread.PipeGauge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Builds the hollow of a part: the bores laid over each other, the larger counting everywhere. */
final class InnerProfile {
    private final Length length;
    private final boolean withRoom;
    private Profile hollow;

    private InnerProfile(Length length, boolean withRoom) {
        this.length = length;
        this.withRoom = withRoom;
        this.hollow = Profile.level(Length.ZERO, length, Length.ZERO);
    }

    /** What the description asks for: blind tapped and reamed holes end with their full depth. */
    static Profile asked(Body.Turned body) {
        return of(body, false);
    }

    /** The most that may be hollow: with the room beyond a blind thread or reamed hole that its tools need. */
    static Profile atMost(Body.Turned body) {
        return of(body, true);
    }

    private static Profile of(Body.Turned body, boolean withRoom) {
        var inner = new InnerProfile(body.length(), withRoom);
        largestFirst(body).forEach(bore -> inner.add(bore, body));
        body.inBores().forEach(inner::add);
        return inner.hollow;
    }

    private static List<Bore> largestFirst(Body.Turned body) {
        return body.inside().stream()
                .sorted(Comparator.comparing(InnerProfile::mouth).reversed())
                .toList();
    }

    /** The bores that add nothing to the larger ones. */
    static List<Bore> idle(Body.Turned body) {
        var inner = new InnerProfile(body.length(), false);
        List<Bore> idle = new ArrayList<>();
        for (Bore bore : largestFirst(body)) {
            Profile before = inner.hollow;
            inner.add(bore, body);
            if (inner.hollow.equals(before) && !(bore instanceof Bore.Tapped)) {
                idle.add(bore);
            }
        }
        return idle;
    }

    /** The diameter of the hollow that a bore leaves at its mouth, edges apart. */
    static Length mouth(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> drilled.diameter().length();
            case Bore.Bored bored -> bored.diameter().length();
            case Bore.Reamed reamed -> reamed.diameter().length();
            case Bore.Counterbored counterbored -> counterbored.diameter().length();
            case Bore.Tapped tapped -> tapped.thread().minorInternal();
            case Bore.Coned coned -> coned.mouth().length();
        };
    }

    /** The root of an inside thread along its full turns. */
    static Profile root(Bore.Tapped tapped, Length length) {
        var inner = new InnerProfile(length, false);
        Length depth = inner.depth(tapped.depth());
        List<Station> seen = crest(tapped, tapped.thread().majorInternal().half(), depth);
        return new Profile(
                switch (tapped.from()) {
                    case A -> seen;
                    case B -> inner.turned(seen);
                });
    }

    /** A line from the mouth to a depth, level or narrowing as a taper thread does. */
    private static List<Station> crest(Bore.Tapped tapped, Length radius, Length depth) {
        Length fall = tapped.thread().isTaper()
                ? depth.times(1 / PipeGauge.TAPER_ONE_IN).half()
                : Length.ZERO;
        return List.of(new Station(Length.ZERO, radius), new Station(depth, radius.minus(fall)));
    }

    /** Only what turns widens the hollow all round. */
    private void add(InBore feature) {
        if (feature instanceof InBore.Recess recess) {
            Length from = Length.most(recess.from().length(), Length.ZERO);
            Length to = Length.least(recess.from().length().plus(recess.width().length()), length);
            if (from.isLessThan(to)) {
                Profile wide =
                        Profile.level(from, to, recess.diameter().length().half());
                hollow = hollow.spliced(hollow.cut(from, to).larger(wide));
            }
        }
    }

    private void add(Bore bore, Body.Turned body) {
        List<Station> seen = seenFromEnd(bore, body);
        hollow = hollow.larger(new Profile(
                switch (bore.from()) {
                    case A -> seen;
                    case B -> turned(seen);
                }));
    }

    private List<Station> turned(List<Station> stations) {
        return stations.reversed().stream()
                .map(station -> new Station(length.minus(station.at()), station.radius()))
                .toList();
    }

    /** The bore alone, over the whole part, positions counted from the end it is made from. */
    private List<Station> seenFromEnd(Bore bore, Body.Turned body) {
        Length radius = mouth(bore).half();
        return switch (bore) {
            case Bore.Drilled drilled -> pointed(drilled.depth(), radius);
            case Bore.Bored bored -> flat(bored, bored.mouth(), radius);
            case Bore.Counterbored counterbored -> flat(counterbored, counterbored.mouth(), radius);
            case Bore.Reamed reamed -> mouthed(reamed.from(), reamed.mouth(), withRoom(reamed, radius, body));
            case Bore.Tapped tapped -> tapped(tapped, radius, body);
            case Bore.Coned coned -> cone(coned, radius);
        };
    }

    private List<Station> flat(Bore bore, Edge mouth, Length radius) {
        return mouthed(bore.from(), mouth, flat(depth(bore.depth()), radius));
    }

    private List<Station> withRoom(Bore bore, Length radius, Body.Turned body) {
        Length room = withRoom ? ToolRoom.beyond(bore, body) : Length.ZERO;
        return room.isZero()
                ? flat(depth(bore.depth()), radius)
                : pointed(depth(bore.depth()).plus(room), radius);
    }

    private List<Station> tapped(Bore.Tapped tapped, Length radius, Body.Turned body) {
        return tapped.thread().isTaper()
                ? closed(crest(tapped, radius, depth(tapped.depth())))
                : withRoom(tapped, radius, body);
    }

    private Length depth(Depth depth) {
        return switch (depth) {
            case Depth.Through() -> length;
            case Depth.Blind(var size) -> Length.least(size.length(), length);
        };
    }

    private List<Station> flat(Length depth, Length radius) {
        return closed(List.of(new Station(Length.ZERO, radius), new Station(depth, radius)));
    }

    private List<Station> pointed(Depth depth, Length radius) {
        return switch (depth) {
            case Depth.Through() -> flat(length, radius);
            case Depth.Blind(var size) -> pointed(size.length(), radius);
        };
    }

    private List<Station> pointed(Length depth, Length radius) {
        Length tip = depth.plus(DrillPoint.height(radius.times(2)));
        return closed(
                List.of(new Station(Length.ZERO, radius), new Station(depth, radius), new Station(tip, Length.ZERO)));
    }

    private List<Station> cone(Bore.Coned coned, Length radius) {
        Length narrow = coned.to().length().half();
        Length depth = radius.minus(narrow).times(1 / coned.angle().half().tan());
        return closed(List.of(new Station(Length.ZERO, radius), new Station(depth, narrow)));
    }

    /** Follows a bore with nothing hollow up to the other end; what would stick out there is cut off. */
    private List<Station> closed(List<Station> stations) {
        Station last = stations.getLast();
        if (last.at().isLessThan(length)) {
            var closed = new ArrayList<>(stations);
            closed.add(new Station(last.at(), Length.ZERO));
            closed.add(new Station(length, Length.ZERO));
            return closed;
        }
        return new Profile(stations).cut(Length.ZERO, length).stations();
    }

    /** Opens the mouth of a bore where it begins: at the end face, or at the bottom of a larger bore from that end. */
    private List<Station> mouthed(End from, Edge edge, List<Station> stations) {
        Length radius = stations.getFirst().radius();
        Length mouth = covered(from, radius);
        if (edge instanceof Edge.Plain || !mouth.isLessThan(length)) {
            return stations;
        }
        var opening = new ArrayList<Station>();
        opening.add(new Station(Length.ZERO, Length.ZERO));
        opening.add(new Station(mouth, Length.ZERO));
        new Corner(radius.nanometres(), 0, true)
                .stations(edge).stream()
                        .map(station -> new Station(mouth.plus(station.at()), station.radius()))
                        .forEach(opening::add);
        return new Profile(stations).larger(new Profile(closed(opening))).stations();
    }

    /** How deep from an end the hollow made so far is wider than a radius. */
    private Length covered(End from, Length radius) {
        List<Station> stations = switch (from) {
            case A -> hollow.stations();
            case B -> turned(hollow.stations());
        };
        if (!stations.getFirst().radius().isMoreThan(radius)) {
            return Length.ZERO;
        }
        for (int i = 1; i < stations.size(); i++) {
            Station next = stations.get(i);
            if (!next.radius().isMoreThan(radius)) {
                return new Segment(stations.get(i - 1), next).positionOf(radius);
            }
        }
        return length;
    }
}
