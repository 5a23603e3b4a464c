package chargehand.part;

import chargehand.measure.Length;

/** Something milled into the top face of a block. */
public sealed interface BlockCut {
    /** What the drawing or the shop calls it, unique within the part. */
    String name();

    /** How deep it is, from the top. */
    Size depth();

    /** What it covers of a block, seen from above. */
    Area area(Body.Block block);

    /**
     * A slot along one side.
     *
     * @param along which way it runs
     * @param at where its middle lies: from the lower side where it runs along the length, from the left end otherwise
     * @param width across
     * @param run how far it goes
     */
    record Slot(String name, Way along, Size at, Size width, Size depth, Run run) implements BlockCut {
        @Override
        public Area area(Body.Block block) {
            Length half = width.length().half();
            Length low = at.length().minus(half);
            Length high = at.length().plus(half);
            Length whole =
                    along == Way.X ? block.length().length() : block.width().length();
            Length from = switch (run) {
                case Run.Open() -> Length.ZERO;
                case Run.Part(Size start, Size length) -> start.length();
            };
            Length to = switch (run) {
                case Run.Open() -> whole;
                case Run.Part(Size start, Size length) -> start.length().plus(length.length());
            };
            return along == Way.X ? new Area(from, to, low, high) : new Area(low, high, from, to);
        }
    }

    /**
     * A step along the whole of one side.
     *
     * @param side which
     * @param width in from that side
     */
    record Step(String name, Side side, Size width, Size depth) implements BlockCut {
        @Override
        public Area area(Body.Block block) {
            Length in = width.length();
            Length length = block.length().length();
            Length wide = block.width().length();
            return switch (side) {
                case LEFT -> new Area(Length.ZERO, in, Length.ZERO, wide);
                case RIGHT -> new Area(length.minus(in), length, Length.ZERO, wide);
                case LOWER -> new Area(Length.ZERO, length, Length.ZERO, in);
                case UPPER -> new Area(Length.ZERO, length, wide.minus(in), wide);
            };
        }
    }

    /** The ways a slot can run. */
    enum Way {
        /** Along the length. */
        X,
        /** Along the width. */
        Y
    }

    /** How far a slot goes. */
    sealed interface Run {
        /** Right across, open at both ends. */
        record Open() implements Run {}

        /**
         * Over a stretch, with round ends within the block.
         *
         * @param from where it begins, from the left end or the lower side
         * @param length over its round ends
         */
        record Part(Size from, Size length) implements Run {}
    }

    /** The sides of a block, seen from above. */
    enum Side {
        LEFT,
        RIGHT,
        LOWER,
        UPPER
    }

    /** A rectangle seen from above, from the left end and the lower side. */
    record Area(Length left, Length right, Length lower, Length upper) {}
}
