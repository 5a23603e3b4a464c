package chargehand.trade.weight;

import chargehand.measure.Length;
import java.util.List;

/** Simple solids, each with the sizes it is given by, in order. */
public enum Body {
    ROUND("round", "π/4 d² L", "diameter", "length"),
    TUBE("tube", "π/4 (D² − d²) L", "outside", "inside", "length"),
    SQUARE("square", "s² L", "side", "length"),
    HEXAGON("hexagon", "√3/2 s² L", "across flats", "length"),
    OCTAGON("octagon", "0.8284 s² L", "across flats", "length"),
    FLAT("flat", "b h L", "width", "thickness", "length"),
    SPHERE("sphere", "π/6 d³", "diameter"),
    CONE("cone", "π/12 (D² + D d + d²) L", "large end", "small end", "length");

    private final String word;
    private final String formula;
    private final String sizes;

    Body(String word, String formula, String... sizes) {
        this.word = word;
        this.formula = formula;
        this.sizes = String.join(", ", sizes);
    }

    /** The word it is asked by. */
    public String word() {
        return word;
    }

    /** Its volume in symbols. */
    public String formula() {
        return formula;
    }

    /** What its sizes are, in order. */
    public String sizes() {
        return sizes;
    }

    /** How many sizes it is given by. */
    public int count() {
        return sizes.split(", ", -1).length;
    }

    /** Its volume (mm³) from as many sizes as {@link #count} says. */
    public double volumeMm3(List<Length> given) {
        double first = given.getFirst().mm();
        double last = given.getLast().mm();
        return switch (this) {
            case ROUND -> Math.PI / 4 * first * first * last;
            case TUBE -> Math.PI / 4 * (first * first - square(given.get(1))) * last;
            case SQUARE -> first * first * last;
            case HEXAGON -> Math.sqrt(3) / 2 * first * first * last;
            case OCTAGON -> 2 * (Math.sqrt(2) - 1) * first * first * last;
            case FLAT -> first * given.get(1).mm() * last;
            case SPHERE -> Math.PI / 6 * first * first * first;
            case CONE -> Math.PI / 12 * (first * first + first * given.get(1).mm() + square(given.get(1))) * last;
        };
    }

    private static double square(Length length) {
        return length.mm() * length.mm();
    }
}
