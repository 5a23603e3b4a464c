package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.List;

/** One piece of a {@link Wording}. All lengths are in millimetres and grow with the lettering height. */
sealed interface Piece {
    double width(double height);

    double ascent(double height);

    double descent(double height);

    List<Mark> marks(Local frame, double height, Ink ink);

    /** The least height of letters that can be read at the machine (ISO 3098 size). */
    double LEAST = 2.5;

    /** The size of stacked figures: one step below that of the words. */
    private static Lettering small(double height) {
        return Lettering.height(Math.max(LEAST, height / Math.sqrt(2)));
    }

    private static LineStyle stroke(double height) {
        return height < 3 ? LineStyle.NARROW : LineStyle.SYMBOL;
    }

    /** Plain words. */
    record Run(String text) implements Piece {
        private static final double DESCENDERS = 0.3;

        @Override
        public double width(double height) {
            return Lettering.height(height).width(text);
        }

        @Override
        public double ascent(double height) {
            return height;
        }

        @Override
        public double descent(double height) {
            return text.codePoints().anyMatch(c -> "gjpqy,;()".indexOf(c) >= 0) ? DESCENDERS * height : 0;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            return text.isBlank()
                    ? List.of()
                    : List.of(Wording.words(frame, 0, 0, Lettering.height(height), text, ink));
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /** A circle with a stroke through it. */
    record Diameter() implements Piece {
        private static final double RADIUS = 0.4;
        private static final double HALF_STROKE = 0.7;

        @Override
        public double width(double height) {
            return 1.1 * height;
        }

        @Override
        public double ascent(double height) {
            return 1.1 * height;
        }

        @Override
        public double descent(double height) {
            return 0.1 * height;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            Local centre = frame.moved(0.45 * height, 0.5 * height);
            Local slanted = new Local(centre.origin(), frame.turned() + 60);
            return List.of(
                    new Mark.Circle(stroke(height), ink, centre.origin(), RADIUS * height),
                    new Mark.Line(
                            stroke(height),
                            ink,
                            slanted.at(-HALF_STROKE * height, 0),
                            slanted.at(HALF_STROKE * height, 0)));
        }

        @Override
        public String toString() {
            return Wording.DIAMETER;
        }
    }

    /** A square standing on the base line. */
    record Square() implements Piece {
        @Override
        public double width(double height) {
            return 1.1 * height;
        }

        @Override
        public double ascent(double height) {
            return height;
        }

        @Override
        public double descent(double height) {
            return 0;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            double side = 0.8 * height;
            return List.of(new Mark.Stroke(stroke(height), ink, frame.round(0, 0, side, 0, side, side, 0, side)));
        }

        @Override
        public String toString() {
            return Wording.SQUARE;
        }
    }

    /** A slim triangle: a taper (ISO 3040; one high and two long, from memory). */
    record Taper(boolean closesRight) implements Piece {
        @Override
        public double width(double height) {
            return 2 * height;
        }

        @Override
        public double ascent(double height) {
            return height;
        }

        @Override
        public double descent(double height) {
            return 0;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            double base = closesRight ? 0 : width(height);
            double apex = width(height) - base;
            return List.of(new Mark.Stroke(stroke(height), ink, frame.round(base, 0, base, height, apex, height / 2)));
        }

        @Override
        public String toString() {
            return "taper";
        }
    }

    /** A vulgar fraction, its bar half-way up the figures beside it. */
    record Fraction(String numerator, String denominator) implements Piece {
        private static final double GAP = 0.14;

        @Override
        public double width(double height) {
            Lettering small = small(height);
            return Math.max(small.width(numerator), small.width(denominator)) + 0.5 * height;
        }

        @Override
        public double ascent(double height) {
            return (0.5 + GAP) * height + small(height).capitals();
        }

        @Override
        public double descent(double height) {
            return ascent(height) - height;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            Lettering small = small(height);
            double bar = 0.5 * height;
            double middle = width(height) / 2;
            double half = middle - 0.08 * height;
            double above = bar + GAP * height;
            double below = bar - GAP * height - small.capitals();
            return List.of(
                    Wording.words(frame, middle - small.width(numerator) / 2, above, small, numerator, ink),
                    Wording.words(frame, middle - small.width(denominator) / 2, below, small, denominator, ink),
                    new Mark.Line(LineStyle.NARROW, ink, frame.at(middle - half, bar), frame.at(middle + half, bar)));
        }

        @Override
        public String toString() {
            return numerator + "/" + denominator;
        }
    }

    /** Two limits or deviations, the lower one on the base line. */
    record Limits(String upper, String lower) implements Piece {
        private static final double PITCH = 1.35;

        @Override
        public double width(double height) {
            Lettering small = small(height);
            return Math.max(small.width(upper), small.width(lower)) + 0.35 * height;
        }

        @Override
        public double ascent(double height) {
            return (PITCH + 1) * small(height).capitals();
        }

        @Override
        public double descent(double height) {
            return 0;
        }

        @Override
        public List<Mark> marks(Local frame, double height, Ink ink) {
            Lettering small = small(height);
            double right = width(height);
            return List.of(
                    Wording.words(frame, right - small.width(upper), PITCH * small.capitals(), small, upper, ink),
                    Wording.words(frame, right - small.width(lower), 0, small, lower, ink));
        }

        @Override
        public String toString() {
            return " " + upper + "/" + lower;
        }
    }
}
