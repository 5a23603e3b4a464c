package chargehand.method.task;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import java.util.List;

/** How the bores of one part lie to each other. */
public final class Bores {
    private Bores() {}

    /** Whether two bores share a stretch of the axis, as far as can be told without the part's length. */
    static boolean overlap(Bore one, Bore other) {
        return one.from() == other.from() || isThrough(one) || isThrough(other);
    }

    public static boolean isThrough(Bore bore) {
        return switch (bore.depth()) {
            case Depth.Through through -> true;
            case Depth.Blind blind -> false;
        };
    }

    /** Whether a bore breaks the face of an end. */
    public static boolean opensAt(Bore bore, End end) {
        return bore.from() == end || isThrough(bore);
    }

    /**
     * Where the full diameter of a bore ends along the axis.
     *
     * @param length the part's length
     */
    public static Length bottom(Bore bore, Length length) {
        Length depth = switch (bore.depth()) {
            case Depth.Through through -> length;
            case Depth.Blind blind -> blind.depth().length();
        };
        return bore.from() == End.A ? depth : length.minus(depth);
    }

    /** The diameter of the plain hole that a bore asks for; of a cone, its narrow end. */
    public static Length diameter(Bore bore) {
        return bore instanceof Bore.Coned coned ? coned.to().length() : BoreSize.of(bore);
    }

    /** What the drawing asks at the mouth of a bore; it is cut from the bore's own end. */
    public static Edge mouth(Bore bore) {
        return switch (bore) {
            case Bore.Bored bored -> bored.mouth();
            case Bore.Reamed reamed -> reamed.mouth();
            case Bore.Counterbored counterbored -> counterbored.mouth();
            case Bore.Drilled drilled -> new Edge.Plain();
            case Bore.Tapped tapped -> new Edge.Plain();
            case Bore.Coned coned -> new Edge.Plain();
        };
    }

    /** How far from its end a bore opens: 0, or the bottom of the deepest larger bore from the same end. */
    public static Length opens(Bore bore, Body.Turned body) {
        return body.inside().stream()
                .filter(other ->
                        other.from() == bore.from() && BoreSize.of(other).isMoreThan(BoreSize.of(bore)))
                .map(other -> widerUntil(other, BoreSize.of(bore), body.length()))
                .reduce(Length.ZERO, Length::most);
    }

    /** How deep from its end a bore is wider than a diameter. */
    private static Length widerUntil(Bore bore, Length diameter, Length length) {
        if (bore instanceof Bore.Coned coned) {
            Length narrow = Length.most(diameter, coned.to().length());
            Length wider = coned.mouth().length().minus(narrow);
            return wider.half().times(1 / coned.angle().half().tan());
        }
        return bottom(bore, length)
                .minus(bore.from() == End.A ? Length.ZERO : length)
                .abs();
    }

    /** Whether larger bores leave nothing of a plain bore, so that it is never seen and need not be made. */
    static boolean isSwallowed(Bore bore, Body.Turned body) {
        if (bore instanceof Bore.Tapped || body.inside().size() == 1) {
            return false;
        }
        List<Bore> others =
                body.inside().stream().filter(other -> !other.equals(bore)).toList();
        Solid without = Solid.of(body.with(body.outside(), others));
        return without.inner().equals(Solid.of(body).inner());
    }
}
