package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import java.util.List;

/** A length as it lies along one side of a view, measured once. */
final class Span {
    /** Where the middle of words may stand that fit, as parts of the span, best first. */
    private static final List<Double> MIDDLES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78);

    private final double from;
    private final double to;
    private final Wording wording;
    private final boolean wordsFit;
    private final Extent wordsBefore;
    private final Extent wordsAfter;
    private final List<Between> within;
    private final int rank;

    /**
     * A length.
     *
     * @param from where it begins on paper (mm along the side)
     * @param to where it ends, more than {@code from}
     * @param wording as it is printed
     */
    Span(double from, double to, Wording wording) {
        this(from, to, wording, 0);
    }

    private Span(double from, double to, Wording wording, int rank) {
        if (!(from < to)) {
            throw new IllegalArgumentException("a length runs from less to more, not " + from + " to " + to);
        }
        this.from = from;
        this.to = to;
        this.wording = wording;
        this.rank = rank;
        LinearDimension line = new LinearDimension(Local.at(new Point(0, 0)), to - from, wording);
        wordsFit = line.wordsFit();
        wordsBefore = extent(line, false);
        wordsAfter = extent(line, true);
        within = MIDDLES.stream()
                .map(part -> new Between(part, from + line.words(part)[0], from + line.words(part)[1]))
                .filter(words -> words.left >= from && words.right <= to)
                .toList();
    }

    /** How far its line goes, and where words outside stand. */
    private record Extent(double left, double right, double wordsLeft, double wordsRight) {}

    /** Where words stand whose middle lies at a part of the span. */
    private record Between(double part, double left, double right) {
        boolean isFree(List<Double> passing) {
            return passing.stream().noneMatch(x -> x > left && x < right);
        }
    }

    private Extent extent(LinearDimension line, boolean after) {
        double[] words = line.outsideWords(after);
        return new Extent(from - line.before(after), to + line.after(after), from + words[0], from + words[1]);
    }

    /** The same length wanted so far out. */
    Span ranked(int other) {
        return other == rank ? this : new Span(from, to, wording, other);
    }

    /** How far out somebody wants it: -1 before those that nobody moves, 1 beyond them. */
    int rank() {
        return rank;
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    Wording wording() {
        return wording;
    }

    double length() {
        return to - from;
    }

    /** Where its line begins, with words outside after it or before it. */
    double left(boolean after) {
        return after ? wordsAfter.left : wordsBefore.left;
    }

    /** Where its line ends. */
    double right(boolean after) {
        return after ? wordsAfter.right : wordsBefore.right;
    }

    /** Whether the two share more than an end. */
    boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }

    /** Whether extension lines that go past must run through its words. */
    boolean isStruckAt(List<Double> passing, boolean after) {
        if (wordsFit) {
            return within.stream().noneMatch(words -> words.isFree(passing));
        }
        Extent extent = after ? wordsAfter : wordsBefore;
        return passing.stream().anyMatch(x -> x > extent.wordsLeft && x < extent.wordsRight);
    }

    /** Where the middle of its words stands clear of what passes, as a part of the span. */
    double middle(List<Double> passing) {
        return within.stream()
                .filter(words -> words.isFree(passing))
                .mapToDouble(Between::part)
                .findFirst()
                .orElse(0.5);
    }
}
