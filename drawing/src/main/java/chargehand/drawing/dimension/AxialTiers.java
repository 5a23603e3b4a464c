package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Stacks lengths along the axis outward from the view, shorter ones nearer, so that a longer one goes round those within it
 * and no extension line crosses a dimension line of a length that lies beside it.
 */
final class AxialTiers {
    /** From the outline to the first line and from line to line (mm). */
    static final double FIRST = 10;

    static final double NEXT = 8;

    private static final double GAP = 1;
    private static final double OVERSHOOT = 2;

    private static final double CLEAR_OF_WORDS = 0.6;

    private static final List<Double> MIDDLES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78);

    /** Room between two lengths in one tier (mm). */
    private static final double CLEAR = 3;

    private final AxialScale scale;
    private final Side side;
    private final List<Tiered> placed = new ArrayList<>();

    private AxialTiers(AxialScale scale, Side side) {
        this.scale = scale;
        this.side = side;
    }

    /** A length in its tier, tiers counted from 0 at the view. */
    record Tiered(AxialDimension dimension, int tier, boolean wordsAfter, double from, double to) {
        private boolean clashes(Tiered other) {
            return tier == other.tier && from - CLEAR < other.to && other.from - CLEAR < to && !follows(other);
        }

        /** Whether one begins where the other ends and neither needs more room than its own. */
        private boolean follows(Tiered other) {
            return from == other.to || to == other.from;
        }

        private boolean overlaps(AxialDimension other) {
            return dimension.from().isLessThan(other.to()) && other.from().isLessThan(dimension.to());
        }
    }

    /**
     * Gives each length its tier.
     *
     * @param others further positions that words outside a length should keep away from
     */
    static List<Tiered> of(List<AxialDimension> dimensions, AxialScale scale, Side side, List<Length> others) {
        List<Length> faces = Stream.concat(
                        others.stream(), dimensions.stream().flatMap(length -> Stream.of(length.from(), length.to())))
                .toList();
        AxialTiers tiers = new AxialTiers(scale, side);
        dimensions.stream()
                .sorted(Comparator.comparing(AxialDimension::length).thenComparing(AxialDimension::from))
                .forEach(dimension -> tiers.add(dimension, faces));
        return tiers.placed;
    }

    private void add(AxialDimension dimension, List<Length> faces) {
        int tier = placed.stream()
                .filter(other -> other.overlaps(dimension))
                .mapToInt(other -> other.tier + 1)
                .max()
                .orElse(0);
        boolean wordsAfter = room(dimension, faces, true) > room(dimension, faces, false);
        Tiered tiered = tiered(dimension, tier, wordsAfter);
        while (clashes(tiered)) {
            Tiered turned = tiered(dimension, tier, !wordsAfter);
            if (!clashes(turned)) {
                tiered = turned;
                break;
            }
            tier++;
            tiered = tiered(dimension, tier, wordsAfter);
        }
        placed.add(tiered);
    }

    private boolean clashes(Tiered tiered) {
        return placed.stream().anyMatch(tiered::clashes);
    }

    /** How far it is to the next of the faces, after this length or before it (mm). */
    private double room(AxialDimension dimension, List<Length> faces, boolean after) {
        Length end = after ? dimension.to() : dimension.from();
        return faces.stream()
                .filter(face -> after ? face.isMoreThan(end) : face.isLessThan(end))
                .mapToDouble(face -> Math.abs(scale.x(face) - scale.x(end)))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private Tiered tiered(AxialDimension dimension, int tier, boolean wordsAfter) {
        LinearDimension line = line(dimension, 0, 0.5);
        double from = scale.x(dimension.from()) - line.before(wordsAfter);
        double to = scale.x(dimension.to()) + line.after(wordsAfter);
        return new Tiered(dimension, tier, wordsAfter, from, to);
    }

    private LinearDimension line(AxialDimension dimension, double y, double middle) {
        double from = scale.x(dimension.from());
        return new LinearDimension(
                Local.at(new Point(from, y)), scale.x(dimension.to()) - from, dimension.wording(), middle);
    }

    /**
     * Draws tiered lengths.
     *
     * @param outline the furthest that the view reaches on this side (mm from the axis, not negative)
     * @param reach how far the outline reaches at a face
     */
    static List<Placing> draw(
            List<Tiered> tiered, AxialScale scale, Side side, double outline, ToDoubleFunction<Length> reach) {
        AxialTiers tiers = new AxialTiers(scale, side);
        tiers.placed.addAll(tiered);
        return tiered.stream().map(one -> tiers.draw(one, outline, reach)).toList();
    }

    /** From line to line: enough for the tallest words and the ends of the extension lines below them. */
    private double pitch() {
        return placed.stream()
                .mapToDouble(one -> LinearDimension.rise(one.dimension.wording()) + OVERSHOOT + CLEAR_OF_WORDS)
                .reduce(NEXT, Math::max);
    }

    private Placing draw(Tiered tiered, double outline, ToDoubleFunction<Length> reach) {
        double y = side.outward() * (outline + FIRST + pitch() * tiered.tier);
        Placing.Pen pen = Placing.pen();
        for (Length face : List.of(tiered.dimension.from(), tiered.dimension.to())) {
            double x = scale.x(face);
            double start = side.outward() * (reach.applyAsDouble(face) + GAP);
            pen.line(Placing.Kind.EXTENSION, new Point(x, start), new Point(x, y + side.outward() * OVERSHOOT));
        }
        line(tiered.dimension, y, middle(tiered)).draw(pen, tiered.wordsAfter);
        return pen.at(0);
    }

    /** Where words stand so that no extension line of a length further out runs through them, as a part of the span. */
    private double middle(Tiered tiered) {
        LinearDimension line = line(tiered.dimension, 0, 0.5);
        double from = scale.x(tiered.dimension.from());
        List<Double> passing = placed.stream()
                .filter(other -> other.tier > tiered.tier)
                .flatMap(other -> Stream.of(other.dimension.from(), other.dimension.to()))
                .map(face -> scale.x(face) - from)
                .toList();
        return MIDDLES.stream()
                .filter(part -> {
                    double[] words = line.words(part);
                    boolean within = words[0] >= 0 && words[1] <= line.span();
                    return within && passing.stream().noneMatch(x -> x > words[0] && x < words[1]);
                })
                .findFirst()
                .orElse(0.5);
    }
}
