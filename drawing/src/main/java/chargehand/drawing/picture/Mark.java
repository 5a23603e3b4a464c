package chargehand.drawing.picture;

import chargehand.drawing.lettering.Lettering;

/** One thing drawn. */
public sealed interface Mark {
    /** The same mark further right and down (mm). */
    Mark moved(double right, double down);

    /** A straight line. */
    record Line(LineStyle style, Ink ink, Point from, Point to) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Line(style, ink, from.moved(right, down), to.moved(right, down));
        }
    }

    /** A line along a path. */
    record Stroke(LineStyle style, Ink ink, Path path) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Stroke(style, ink, path.moved(right, down));
        }
    }

    /** A filled area within a path. */
    record Fill(Ink ink, Path path) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Fill(ink, path.moved(right, down));
        }
    }

    /** A full circle. */
    record Circle(LineStyle style, Ink ink, Point centre, double radius) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Circle(style, ink, centre.moved(right, down), radius);
        }
    }

    /** A filled full circle. */
    record Disc(Ink ink, Point centre, double radius) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Disc(ink, centre.moved(right, down), radius);
        }
    }

    /**
     * Words.
     *
     * @param at on the base line: the left end, middle or right end of the words as {@code align} says
     * @param turned how far the base line is turned (degrees, anticlockwise as seen); 90 reads from the right
     */
    record Words(Ink ink, Lettering lettering, Point at, Align align, double turned, String text) implements Mark {
        @Override
        public Mark moved(double right, double down) {
            return new Words(ink, lettering, at.moved(right, down), align, turned, text);
        }
    }

    /** Which point of the words their place is. */
    enum Align {
        LEFT,
        MIDDLE,
        RIGHT
    }
}
