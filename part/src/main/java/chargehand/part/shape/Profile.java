package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.measure.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

/**
 * A radius along the axis, made of straight pieces. Where it jumps, two stations share one position; the radius just
 * before a jump and just after it are told apart by the side they are looked at from.
 *
 * <p>Arcs are given as chords that stay within {@link Arc#CHORD_ERROR} of them. Where an operation has to place a station
 * of its own (where two profiles cross) it is rounded to the nearest nanometre.
 *
 * @param stations from end A to end B, at positions that never go back, at least two, the first before the last
 */
public record Profile(List<Station> stations) {
    private static final double MM3_PER_NM3 = 1e-18;

    public Profile {
        stations = List.copyOf(tidy(stations));
        if (stations.size() < 2
                || !stations.getFirst().at().isLessThan(stations.getLast().at())) {
            throw new IllegalArgumentException("a profile runs from one position to a later one, not " + stations);
        }
    }

    /** The same radius from one position to another. */
    public static Profile level(Length from, Length to, Length radius) {
        return new Profile(List.of(new Station(from, radius), new Station(to, radius)));
    }

    /** Drops stations that say nothing: repeated ones, and the inner ones of a level stretch or of a jump. */
    private static List<Station> tidy(List<Station> stations) {
        var tidy = new ArrayList<Station>();
        for (Station next : stations) {
            if (!tidy.isEmpty() && next.at().isLessThan(tidy.getLast().at())) {
                throw new IllegalArgumentException("a profile never goes back: " + next + " after " + tidy.getLast());
            }
            while (tidy.size() >= 2 && isBetween(tidy.get(tidy.size() - 2), tidy.getLast(), next)) {
                tidy.removeLast();
            }
            if (tidy.isEmpty() || !tidy.getLast().equals(next)) {
                tidy.add(next);
            }
        }
        return tidy;
    }

    private static boolean isBetween(Station before, Station middle, Station after) {
        boolean level = before.r() == middle.r() && middle.r() == after.r();
        boolean jump = before.z() == middle.z() && middle.z() == after.z();
        return level || jump;
    }

    public Length start() {
        return stations.getFirst().at();
    }

    public Length end() {
        return stations.getLast().at();
    }

    /** The radius just before a position, as seen from end A; at the start, the radius just after it. */
    public Length radiusBefore(Length at) {
        return segmentBefore(at).radiusAt(at);
    }

    /** The radius just after a position, as seen from end B; at the end, the radius just before it. */
    public Length radiusAfter(Length at) {
        return segmentAfter(at).radiusAt(at);
    }

    /** The least radius from one position to another, both included with the jumps that lie at them. */
    public Length least(Length from, Length to) {
        return between(from, to).stream()
                .map(Station::radius)
                .reduce(Length::least)
                .orElseThrow();
    }

    /** The largest radius from one position to another, both included with the jumps that lie at them. */
    public Length most(Length from, Length to) {
        return between(from, to).stream()
                .map(Station::radius)
                .reduce(Length::most)
                .orElseThrow();
    }

    private List<Station> between(Length from, Length to) {
        var between = new ArrayList<Station>();
        between.add(new Station(from, radiusBefore(from)));
        between.add(new Station(from, radiusAfter(from)));
        int after = firstFrom(from.nanometres() + 1);
        between.addAll(stations.subList(after, Math.max(after, firstFrom(to.nanometres()))));
        between.add(new Station(to, radiusBefore(to)));
        between.add(new Station(to, radiusAfter(to)));
        return between;
    }

    /** This profile from one position to another, without the jumps that lie at them. */
    public Profile cut(Length from, Length to) {
        List<Station> between = between(from, to);
        return new Profile(between.subList(1, between.size() - 1));
    }

    /** This profile with one stretch of it replaced. */
    public Profile spliced(Profile stretch) {
        var spliced = new ArrayList<Station>();
        if (start().isLessThan(stretch.start())) {
            spliced.addAll(cut(start(), stretch.start()).stations());
        }
        spliced.addAll(stretch.stations());
        if (stretch.end().isLessThan(end())) {
            spliced.addAll(cut(stretch.end(), end()).stations());
        }
        return new Profile(spliced);
    }

    /** The larger of the two radii at every position; both profiles run over the same positions. */
    public Profile larger(Profile other) {
        return merged(other, Length::most);
    }

    /** The smaller of the two radii at every position; both profiles run over the same positions. */
    public Profile smaller(Profile other) {
        return merged(other, Length::least);
    }

    private Profile merged(Profile other, BinaryOperator<Length> choice) {
        if (!start().equals(other.start()) || !end().equals(other.end())) {
            throw new IllegalArgumentException("profiles over different positions: " + start() + " to " + end()
                    + " and " + other.start() + " to " + other.end());
        }
        List<Length> positions = positions(other);
        var merged = new ArrayList<Station>();
        for (int i = 1; i < positions.size(); i++) {
            Length from = positions.get(i - 1);
            Length to = positions.get(i);
            Segment mine = piece(from, to);
            Segment others = other.piece(from, to);
            merged.add(new Station(
                    from, choice.apply(mine.from().radius(), others.from().radius())));
            mine.crossing(others).ifPresent(merged::add);
            merged.add(
                    new Station(to, choice.apply(mine.to().radius(), others.to().radius())));
        }
        return new Profile(merged);
    }

    /** Every position at which this profile or another has a station, each once, in order. */
    public List<Length> positions(Profile other) {
        return Stream.concat(stations.stream(), other.stations.stream())
                .map(Station::at)
                .sorted()
                .distinct()
                .toList();
    }

    private Segment piece(Length from, Length to) {
        return new Segment(new Station(from, radiusAfter(from)), new Station(to, radiusBefore(to)));
    }

    /** The volume of the solid that turns inside this profile. */
    public Volume volume() {
        double nm3 = segments().stream().mapToDouble(Segment::turnedNm3).sum();
        return Volume.cubicMm(nm3 * MM3_PER_NM3);
    }

    /**
     * Whether every point of this profile lies within {@code tolerance} of the other one and the other way round, jumps
     * being walls that join their two stations.
     */
    public boolean isWithin(Length tolerance, Profile other) {
        return new Nearness(other).holds(this, tolerance) && new Nearness(this).holds(other, tolerance);
    }

    /**
     * The place where the wall between this profile, taken as a hollow, and an outside is thinnest, if it is thinner than
     * a bound. It is measured square to the surfaces and round corners, not only square to the axis; where this profile is
     * 0 there is no wall.
     */
    public Optional<Wall> thinnest(Profile outside, Length below) {
        List<Segment> hollow =
                segments().stream().filter(segment -> !segment.isOnAxis()).toList();
        Gap gap = Gap.between(hollow, outside.segments(), (double) below.nanometres());
        Length wall = new Length((long) Math.floor(gap.nm()));
        return wall.isLessThan(below) ? Optional.of(new Wall(wall, gap.at())) : Optional.empty();
    }

    /**
     * The wall between a hollow and an outside.
     *
     * @param wall its thickness
     * @param at a position along the axis where the hollow is that near to the outside
     */
    public record Wall(Length wall, Length at) {}

    /** The straight pieces, walls at jumps among them. */
    List<Segment> segments() {
        var segments = new ArrayList<Segment>();
        for (int i = 1; i < stations.size(); i++) {
            segments.add(new Segment(stations.get(i - 1), stations.get(i)));
        }
        return segments;
    }

    /** The straight piece that ends at a position or holds it. */
    private Segment segmentBefore(Length at) {
        refuseOutside(at);
        int first = firstFrom(at.nanometres());
        return first == 0 ? segmentAfter(at) : new Segment(stations.get(first - 1), stations.get(first));
    }

    /** The straight piece that begins at a position or holds it. */
    private Segment segmentAfter(Length at) {
        refuseOutside(at);
        int next = firstFrom(at.nanometres() + 1);
        return next == stations.size() ? segmentBefore(at) : new Segment(stations.get(next - 1), stations.get(next));
    }

    /** The index of the first station at or beyond a position (nm); the number of stations when there is none. */
    private int firstFrom(long z) {
        int low = 0;
        int high = stations.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (stations.get(middle).z() < z) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void refuseOutside(Length at) {
        if (at.isLessThan(start()) || at.isMoreThan(end())) {
            throw new IllegalArgumentException("position " + at + " lies outside " + start() + " to " + end());
        }
    }
}
