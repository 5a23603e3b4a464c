package chargehand.method.task;

import chargehand.measure.Length;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;

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
}
