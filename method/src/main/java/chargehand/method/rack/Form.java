package chargehand.method.rack;

import chargehand.measure.Written;

/** The shape of a piece of stock across its length. */
public sealed interface Form {
    /** The shape and its sizes for a person, such as "1 1/4 round". */
    String says();

    /** Round bar. */
    record Round(Written diameter) implements Form {
        @Override
        public String says() {
            return diameter.text() + " round";
        }
    }

    /** Thick tube or cored stick. */
    record Hollow(Written outside, Written inside) implements Form {
        public Hollow {
            if (!inside.length().isLessThan(outside.length())) {
                throw new IllegalArgumentException("the hole of a hollow bar is smaller than its outside");
            }
        }

        @Override
        public String says() {
            return outside.text() + " × " + inside.text() + " hollow";
        }
    }

    /**
     * Hexagon, square or octagon bar.
     *
     * @param sides 4, 6 or 8
     * @param flats the size over two opposite flats
     */
    record Polygon(int sides, Written flats) implements Form {
        public Polygon {
            if (sides != 4 && sides != 6 && sides != 8) {
                throw new IllegalArgumentException("bar is square, hexagon or octagon, not of " + sides + " sides");
            }
        }

        @Override
        public String says() {
            return flats.text()
                    + switch (sides) {
                        case 4 -> " square";
                        case 6 -> " hexagon";
                        default -> " octagon";
                    };
        }
    }

    /** Flat bar, strip or plate. */
    record Flat(Written width, Written thickness) implements Form {
        @Override
        public String says() {
            return width.text() + " × " + thickness.text() + " flat";
        }
    }
}
