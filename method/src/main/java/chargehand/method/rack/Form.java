package chargehand.method.rack;

import chargehand.measure.Written;

/** The shape of a piece of stock across its length. */
public sealed interface Form {
    /** The shape and its sizes for a person, such as "1 1/4 round". */
    String says();

    /** A size as written, with its unit where the words alone leave it open; a fraction is always of an inch. */
    private static String sized(Written size) {
        boolean bare = size.text().chars().allMatch(c -> Character.isDigit(c) || c == '.' || c == ',');
        return bare ? size.text() + " " + size.unit().symbol() : size.text();
    }

    /** Round bar. */
    record Round(Written diameter) implements Form {
        @Override
        public String says() {
            return sized(diameter) + " round";
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
            return sized(flats)
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
            return sized(width) + " × " + sized(thickness) + " flat";
        }
    }
}
