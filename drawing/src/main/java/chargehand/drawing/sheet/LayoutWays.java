package chargehand.drawing.sheet;

import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Shortening;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** The ways to lay out one part at a scale, the best liked first. */
sealed interface LayoutWays {
    static LayoutWays of(Part part) {
        return switch (part.body()) {
            case Body.Turned body -> new Turned(part, body, Solid.of(body));
            case Body.Block block -> new Block(part, block);
        };
    }

    /** The largest size of the part (mm). */
    double largest();

    /** The ways, each laid out only when it is asked for. */
    List<Supplier<List<DrawnView>>> at(DrawingScale scale, double width);

    /** A turned part: whole before broken, end views beside before below. */
    record Turned(Part part, Body.Turned body, Solid solid) implements LayoutWays {
        @Override
        public double largest() {
            return Math.max(body.length().mm(), body.largestDiameter().mm());
        }

        @Override
        public List<Supplier<List<DrawnView>>> at(DrawingScale scale, double width) {
            Set<AxialScale> axial =
                    new LinkedHashSet<>(List.of(AxialScale.of(scale.factor()), Shortening.of(solid, scale.factor())));
            List<Layout.Ends> ends =
                    Layout.needsEndViews(body) ? List.of(Layout.Ends.values()) : List.of(Layout.Ends.BESIDE);
            List<Supplier<List<DrawnView>>> ways = new ArrayList<>();
            for (AxialScale one : axial) {
                boolean goes = one.x(body.length()) < width && one.size(body.largestDiameter()) < width;
                ends.stream()
                        .filter(end -> goes)
                        .forEach(end -> ways.add(() -> Layout.of(part, body, one, end, width)));
            }
            return ways;
        }
    }

    /** A block has one way. */
    record Block(Part part, Body.Block block) implements LayoutWays {
        @Override
        public double largest() {
            return Math.max(block.length().length().mm(), block.width().length().mm());
        }

        @Override
        public List<Supplier<List<DrawnView>>> at(DrawingScale scale, double width) {
            double length = scale.factor() * block.length().length().mm();
            return length < width ? List.of(() -> BlockLayout.of(part, block, scale.factor(), width)) : List.of();
        }
    }
}
