package chargehand.drawing.dimension;

import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Stacks lengths along the axis above or below a side view.
 *
 * @param rank how far out each length is wanted, as {@link Span#rank()}
 */
record AxialTiers(AxialScale scale, Side side, ToIntFunction<AxialDimension> rank) {
    /** Lengths that nobody moves. */
    AxialTiers(AxialScale scale, Side side) {
        this(scale, side, length -> 0);
    }

    /**
     * Gives each length its tier and draws it.
     *
     * @param others further positions that words outside a length should keep away from
     * @param outline the furthest that the view reaches on this side (mm from the axis, not negative)
     * @param reach how far the outline reaches at a face
     */
    List<Placing> draw(
            List<AxialDimension> dimensions, List<Length> others, double outline, ToDoubleFunction<Length> reach) {
        Map<Double, Length> faces = new HashMap<>();
        for (AxialDimension dimension : dimensions) {
            faces.put(scale.x(dimension.from()), dimension.from());
            faces.put(scale.x(dimension.to()), dimension.to());
        }
        return new LengthStack(Rail.level(side), outline, x -> reach.applyAsDouble(face(faces, x)))
                .draw(spans(dimensions), others.stream().map(scale::x).toList());
    }

    private static Length face(Map<Double, Length> faces, double x) {
        Length face = faces.get(x);
        if (face == null) {
            throw new IllegalStateException("no length begins or ends at " + x);
        }
        return face;
    }

    /** The lengths as they lie on paper. */
    List<Span> spans(List<AxialDimension> dimensions) {
        return dimensions.stream()
                .map(dimension -> new Span(scale.x(dimension.from()), scale.x(dimension.to()), dimension.wording())
                        .ranked(rank.applyAsInt(dimension)))
                .toList();
    }
}
