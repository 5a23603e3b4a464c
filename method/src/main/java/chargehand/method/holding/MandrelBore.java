package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.kit.Tooling;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A finished bore in which a mandrel can sit.
 *
 * @param index the bore's place in the part's list
 * @param diameter of the bore
 * @param from where the mandrel bears, from end A
 * @param to where it bears to
 * @param length of the part
 * @param headstock the end from which a stub mandrel comes in
 */
record MandrelBore(int index, Length diameter, Length from, Length to, Length length, End headstock) {
    /** How much of the work's length a mandrel must bear on. */
    private static final double LEAST_BEARING = 0.5;

    /** The longest work on a stub mandrel, which has no centre to help it: length over bore. */
    private static final double MOST_ON_STUB = 3;

    /**
     * The places for a mandrel: a stub comes in from either end, any other goes right through.
     *
     * @param hollow the inside of the finished part
     */
    static List<MandrelBore> list(Standing work, Mandrel mandrel, Profile hollow) {
        var places = new ArrayList<MandrelBore>();
        boolean stub = mandrel.kind() == Tooling.MandrelKind.STUB;
        List<Bore> inside = work.shape().body().inside();
        for (int i = 0; i < inside.size(); i++) {
            if (isFine(inside.get(i)) && work.isDone(new Task.Inside(i, inside.get(i)))) {
                if (!stub && Bores.isThrough(inside.get(i))) {
                    of(work, i, hollow, End.A).ifPresent(places::add);
                }
                for (End headstock : stub ? End.values() : new End[0]) {
                    of(work, i, hollow, headstock)
                            .filter(place -> place.isOpen(work, hollow))
                            .ifPresent(places::add);
                }
            }
        }
        return places;
    }

    private static Optional<MandrelBore> of(Standing work, int index, Profile hollow, End headstock) {
        Length diameter = Bores.diameter(work.shape().body().inside().get(index));
        List<Length> level = hollow.stations().stream()
                .filter(station -> station.radius().equals(diameter.half()))
                .map(Station::at)
                .toList();
        return level.size() < 2
                ? Optional.empty()
                : Optional.of(new MandrelBore(
                        index,
                        diameter,
                        level.getFirst(),
                        level.getLast(),
                        work.shape().body().length(),
                        headstock));
    }

    /** Whether a stub comes in from its end: all that opens there is finished, and nothing is narrower on the way. */
    private boolean isOpen(Standing work, Profile hollow) {
        boolean finished = work.tasks().list().stream()
                .allMatch(task -> !(task instanceof Task.Inside inside)
                        || !Bores.opensAt(inside.bore(), headstock)
                        || work.isDone(task));
        Length near = headstock == End.A ? from : to;
        Length face = headstock == End.A ? hollow.start() : hollow.end();
        return finished
                && (near.equals(face)
                        || !hollow.least(Length.least(near, face), Length.most(near, face))
                                .isLessThan(diameter.half()));
    }

    /** A bored or reamed hole is round and straight enough; a drilled one is not. */
    private static boolean isFine(Bore bore) {
        return switch (bore) {
            case Bore.Bored bored -> true;
            case Bore.Reamed reamed -> true;
            case Bore.Drilled drilled -> false;
            case Bore.Counterbored counterbored -> false;
            case Bore.Tapped tapped -> false;
            case Bore.Coned coned -> false;
        };
    }

    boolean isHeldBy(Mandrel mandrel) {
        Length bears = Length.least(to.minus(from), mandrel.length());
        boolean stands = mandrel.kind() != Tooling.MandrelKind.STUB || length.over(diameter) <= MOST_ON_STUB;
        return mandrel.bore().contain(diameter) && bears.over(length) >= LEAST_BEARING && stands;
    }
}
