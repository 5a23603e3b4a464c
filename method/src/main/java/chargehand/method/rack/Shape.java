package chargehand.method.rack;

import chargehand.measure.Written;

/** The shape of a piece of stock across its length. */
public sealed interface Shape {
    /** The shape and its sizes for a person, such as "1 1/4 round". */
    String says();

    /** Round bar. */
    record Round(Written diameter) implements Shape {
        @Override
        public String says() {
            return diameter.withUnit() + " round";
        }
    }

    /**
     * Hexagon, square or octagon bar.
     *
     * @param sides 4, 6 or 8
     * @param flats the size over two opposite flats
     */
    record Polygon(int sides, Written flats) implements Shape {
        public Polygon {
            if (sides != 4 && sides != 6 && sides != 8) {
                throw new IllegalArgumentException("bar is square, hexagon or octagon, not of " + sides + " sides");
            }
        }

        @Override
        public String says() {
            return flats.withUnit()
                    + switch (sides) {
                        case 4 -> " square";
                        case 6 -> " hexagon";
                        default -> " octagon";
                    };
        }
    }

    /** Flat bar, strip or plate. */
    record Flat(Written width, Written thickness) implements Shape {
        @Override
        public String says() {
            return width.withUnit() + " × " + thickness.withUnit() + " flat";
        }
    }
}
