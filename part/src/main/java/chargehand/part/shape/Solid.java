package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.measure.Volume;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Section;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;

/**
 * The nominal solid of a turned part: what turns round the axis as two profiles, and what is cut into it besides.
 *
 * <p>The outer profile runs over thread crests, tooth tips and polygon corners as they are turned before cutting. The
 * inner one is 0 where the part is solid and runs over the crests (minor diameter) of an inside thread. A blind tapped
 * or reamed hole may be drilled deeper than asked to make room for its tool: a part as made is right when its hollow
 * holds {@link #inner} and does not go beyond {@link #innerAtMost}.
 *
 * @param outer the turned outside
 * @param inner the hollow as asked
 * @param innerAtMost the hollow with the room that tools may need
 * @param threads the threads, outside and inside
 * @param flats the polygons
 * @param teeth the teeth of wheels
 * @param across the holes and keyways across the axis
 */
public record Solid(
        Profile outer,
        Profile inner,
        Profile innerAtMost,
        List<ThreadPlace> threads,
        List<FlatsPlace> flats,
        List<TeethPlace> teeth,
        List<Across> across) {
    public Solid {
        threads = List.copyOf(threads);
        flats = List.copyOf(flats);
        teeth = List.copyOf(teeth);
        across = List.copyOf(across);
    }

    /** A solid without teeth. */
    public Solid(
            Profile outer,
            Profile inner,
            Profile innerAtMost,
            List<ThreadPlace> threads,
            List<FlatsPlace> flats,
            List<Across> across) {
        this(outer, inner, innerAtMost, threads, flats, List.of(), across);
    }

    /**
     * A thread and where it lies.
     *
     * @param name of its section or bore
     * @param inside whether it is in a bore
     * @param root its root all along the full thread: level, or sloping on a taper thread
     */
    public record ThreadPlace(String name, ScrewThread thread, boolean inside, Profile root) {
        /** The end of full thread nearer A. */
        public Length from() {
            return root.start();
        }

        /** The end of full thread nearer B. */
        public Length to() {
            return root.end();
        }
    }

    /**
     * A polygon and where it lies.
     *
     * @param sides how many flats
     * @param across over two opposite flats; for an odd number twice the distance from axis to flat
     * @param corners the diameter over the corners
     */
    public record FlatsPlace(String name, int sides, Length across, Length corners, Length from, Length to) {}

    /**
     * The teeth of a wheel and where they lie.
     *
     * @param count how many
     * @param root the diameter at the bottom of the spaces
     */
    public record TeethPlace(String name, int count, Length pitchDiameter, Length root, Length from, Length to) {}

    /**
     * The solid of a part.
     *
     * @throws IllegalArgumentException when edges overlap or a size is impossible; a part that passed its checks has none
     */
    public static Solid of(Body.Turned body) {
        return new Solid(
                OuterProfile.of(body),
                InnerProfile.asked(body),
                InnerProfile.atMost(body),
                threads(body),
                flats(body),
                teeth(body),
                body.across());
    }

    private static List<ThreadPlace> threads(Body.Turned body) {
        var threads = new ArrayList<ThreadPlace>();
        List<OuterProfile.Flank> flanks = OuterProfile.flanks(body);
        for (int i = 0; i < flanks.size(); i++) {
            if (body.outside().get(i) instanceof Section.Threaded(var stretch, var thread, var fit)) {
                threads.add(new ThreadPlace(
                        stretch.name(), thread, false, flanks.get(i).lowered(thread.depth())));
            }
        }
        for (Bore bore : body.inside()) {
            if (bore instanceof Bore.Tapped tapped) {
                Profile root = InnerProfile.root(tapped, body.length());
                threads.add(new ThreadPlace(tapped.name(), tapped.thread(), true, root));
            }
        }
        return threads;
    }

    private static List<FlatsPlace> flats(Body.Turned body) {
        var flats = new ArrayList<FlatsPlace>();
        Length start = Length.ZERO;
        for (Section section : body.outside()) {
            Length end = start.plus(section.length());
            if (section instanceof Section.Polygon(var stretch, var sides, var across, var corners)) {
                flats.add(new FlatsPlace(stretch.name(), sides, across.length(), corners, start, end));
            }
            start = end;
        }
        return flats;
    }

    private static List<TeethPlace> teeth(Body.Turned body) {
        var teeth = new ArrayList<TeethPlace>();
        for (int i = 0; i < body.outside().size(); i++) {
            if (body.outside().get(i) instanceof Section.Toothed wheel) {
                teeth.add(new TeethPlace(
                        wheel.name(),
                        wheel.teeth(),
                        wheel.pitchDiameter(),
                        wheel.root(),
                        body.start(i),
                        body.start(i).plus(wheel.length())));
            }
        }
        return teeth;
    }

    /** The diameter of the hollow that a bore leaves at its mouth, edges apart: for a tapped one over the thread's crests. */
    public static Length mouthDiameter(Bore bore) {
        return InnerProfile.mouth(bore);
    }

    /** The bores that change nothing, since larger ones take away all that they would; tapped ones leave a thread. */
    public static List<Bore> boresWithinOthers(Body.Turned body) {
        return InnerProfile.idle(body);
    }

    /** From end A to end B. */
    public Length length() {
        return outer.end();
    }

    /** The outside with threads and teeth cut to their roots and flats to their middles: what is left round the hollow. */
    public Profile outerAtLeast() {
        Profile least = outer;
        for (ThreadPlace place : threads) {
            if (!place.inside()) {
                least = least.spliced(least.cut(place.from(), place.to()).smaller(place.root()));
            }
        }
        for (FlatsPlace place : flats) {
            least = lowered(least, place.from(), place.to(), place.across().half());
        }
        for (TeethPlace place : teeth) {
            least = lowered(least, place.from(), place.to(), place.root().half());
        }
        return least;
    }

    private static Profile lowered(Profile profile, Length from, Length to, Length radius) {
        return profile.spliced(profile.cut(from, to).smaller(Profile.level(from, to, radius)));
    }

    /** The hollow with inside threads cut to their roots. */
    public Profile hollowAtMost() {
        Profile most = innerAtMost;
        for (ThreadPlace place : threads) {
            if (place.inside()) {
                most = most.spliced(most.cut(place.from(), place.to()).larger(place.root()));
            }
        }
        return most;
    }

    /**
     * The volume of what turns: outer less inner, with the flats of polygons taken off. Cross holes, keyways, the
     * grooves of threads and the spaces between teeth are not taken off.
     */
    public Volume volume() {
        double flatsOff = flats.stream().mapToDouble(this::segmentsOff).sum();
        return Volume.cubicMm(outer.volume().cubicMm() - inner.volume().cubicMm() - flatsOff);
    }

    /** What milling the flats takes off the turned outside (mm³): circle segments all along. */
    private double segmentsOff(FlatsPlace place) {
        double flat = place.across().half().mm();
        return outer.cut(place.from(), place.to()).segments().stream()
                .mapToDouble(segment -> place.sides() * CircleSegment.along(segment, flat))
                .sum();
    }
}
