package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.Edge;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished bore in which jaws could open, coming in from the headstock's side.
 *
 * @param headstock the end of the part that points to the headstock
 * @param index the bore's place in the part's list
 * @param outer where the level stretch begins at the headstock's end
 * @param depth how far the bore is level from there
 * @param diameter of the bore
 */
record BoreGrip(End headstock, int index, Length outer, Length depth, Length diameter) {
    /** The bores that open at the headstock's end, all that open there being finished, so that jaws can go in. */
    static List<BoreGrip> list(Standing work, End headstock) {
        var grips = new ArrayList<BoreGrip>();
        List<Bore> inside = work.shape().body().inside();
        boolean open = !work.isOnBar()
                && inside.stream().noneMatch(bore -> Bores.opensAt(bore, headstock) && !isDone(work, bore));
        for (int i = 0; open && i < inside.size(); i++) {
            if (isLevel(inside.get(i)) && isWidest(inside, inside.get(i), headstock)) {
                grips.add(of(work, headstock, i));
            }
        }
        return grips;
    }

    /** How much of the bore jaws so long can use, reaching in from the face of the work. */
    Length grip(Length jawLength) {
        return Length.least(depth, jawLength);
    }

    private static boolean isDone(Standing work, Bore bore) {
        return work.isDone(new Task.Inside(work.shape().body().inside().indexOf(bore), bore));
    }

    private static boolean isLevel(Bore bore) {
        return switch (bore) {
            case Bore.Bored bored -> true;
            case Bore.Reamed reamed -> true;
            case Bore.Drilled drilled -> true;
            case Bore.Counterbored counterbored -> true;
            case Bore.Tapped tapped -> false;
            case Bore.Coned coned -> false;
        };
    }

    /** Whether it opens at the end and nothing larger does. */
    private static boolean isWidest(List<Bore> inside, Bore bore, End headstock) {
        return Bores.opensAt(bore, headstock)
                && inside.stream()
                        .filter(other -> !other.equals(bore) && Bores.opensAt(other, headstock))
                        .noneMatch(other -> other instanceof Bore.Coned
                                || Bores.diameter(other).isMoreThan(Bores.diameter(bore)));
    }

    private static BoreGrip of(Standing work, End headstock, int index) {
        Bore bore = work.shape().body().inside().get(index);
        Length length = work.shape().body().length();
        Length face = work.face(headstock);
        End inward = headstock.other();
        Length edge = bore.from() == headstock ? edge(Bores.mouth(bore)) : Length.ZERO;
        Length outer = inward.from(face, edge);
        Length inner = Bores.isThrough(bore) ? narrowed(work, bore, headstock) : Bores.bottom(bore, length);
        return new BoreGrip(headstock, index, outer, inward.distance(outer, inner), Bores.diameter(bore));
    }

    /** A through bore ends, for jaws, at the other face or where its own mouth or a larger bore opens it out. */
    private static Length narrowed(Standing work, Bore bore, End headstock) {
        Length length = work.shape().body().length();
        Length far = headstock == End.A ? length : Length.ZERO;
        Length mouth = bore.from() == headstock.other() ? edge(Bores.mouth(bore)) : Length.ZERO;
        Length opened = work.shape().body().inside().stream()
                .filter(other -> other.from() == headstock.other() && !Bores.isThrough(other))
                .map(other -> Bores.bottom(other, length).minus(far).abs())
                .reduce(Length.ZERO, Length::most);
        return headstock.from(far, Length.most(mouth, opened));
    }

    private static Length edge(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Chamfer chamfer -> chamfer.length().length();
            case Edge.WeldPreparation prepared -> prepared.reach();
            case Edge.Radius radius -> radius.radius().length();
        };
    }
}
