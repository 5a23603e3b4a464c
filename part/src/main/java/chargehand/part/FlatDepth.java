package chargehand.part;

import chargehand.measure.Length;

/** How deep a flat is, as the drawing gives it. */
public sealed interface FlatDepth {
    /** How far above the axis the flat lies on stock of this radius; below zero where it lies beyond the axis. */
    Length height(Length radius);

    /** The size as the drawing gives it. */
    Size size();

    /** Below the surface, at its middle. */
    record Below(Size size) implements FlatDepth {
        @Override
        public Length height(Length radius) {
            return radius.minus(size.length());
        }
    }

    /** Leaving so much from the flat to the opposite side. */
    record Leaving(Size size) implements FlatDepth {
        @Override
        public Length height(Length radius) {
            return size.length().minus(radius);
        }
    }
}
