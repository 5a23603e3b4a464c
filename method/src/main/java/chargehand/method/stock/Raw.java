package chargehand.method.stock;

import chargehand.measure.Length;

/** The stock as it stands across, and for a block as it is when cut to its length. */
public sealed interface Raw {
    /** The largest size across: over the corners where there are any. */
    Length largestAcross();

    /** The area of a cut square across the bar (mm²). */
    double areaSquareMm();

    /** Round bar. */
    record Round(Length diameter) implements Raw {
        @Override
        public Length largestAcross() {
            return diameter;
        }

        @Override
        public double areaSquareMm() {
            return Math.PI / 4 * diameter.mm() * diameter.mm();
        }
    }

    /** Hexagon, square or octagon bar. */
    record Polygon(int sides, Length flats) implements Raw {
        @Override
        public Length largestAcross() {
            return flats.times(1 / Math.cos(Math.PI / sides));
        }

        @Override
        public double areaSquareMm() {
            return sides * flats.mm() * flats.mm() / 4 * Math.tan(Math.PI / sides);
        }
    }

    /**
     * Flat or square bar for a block.
     *
     * @param width across the bar, the larger size
     * @param thickness the smaller size
     * @param lies which way the block lies in it
     */
    record Flat(Length width, Length thickness, Lies lies) implements Raw {
        @Override
        public Length largestAcross() {
            return width;
        }

        @Override
        public double areaSquareMm() {
            return width.mm() * thickness.mm();
        }
    }

    /** The directions of a block: its length x, its width y, its thickness z. */
    enum Direction {
        LENGTH,
        WIDTH,
        THICKNESS
    }

    /**
     * Which way a block lies in a bar.
     *
     * @param along the direction of the block that runs along the bar
     * @param across the direction that lies in the bar's width
     * @param through the direction that lies in the bar's thickness
     */
    record Lies(Direction along, Direction across, Direction through) {}
}
