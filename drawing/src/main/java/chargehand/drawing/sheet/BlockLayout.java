package chargehand.drawing.sheet;

import chargehand.drawing.dimension.BlockSizes;
import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.dimension.SizeText;
import chargehand.drawing.picture.Box;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.BlockView;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/** The views of a block: from the front and from above, below it in first angle and above it in third angle. */
final class BlockLayout {
    private static final double BETWEEN = 10;

    private BlockLayout() {}

    static List<DrawnView> of(Part part, Body.Block block, double scale, double width) {
        SizeText text = new SizeText(part.unit());
        double length = scale * block.length().length().mm();
        double margin = Math.max(0, (width - length) / 2);
        Box limits = new Box(-margin, -10_000, length + margin, 10_000);
        Dimensioned front = BlockSizes.front(block, text, scale);
        Dimensioned plan = BlockSizes.plan(block, text, scale, limits);
        double down = switch (part.drafting().projection()) {
            case FIRST_ANGLE ->
                front.bounds().bottom() + BETWEEN - plan.bounds().top();
            case THIRD_ANGLE -> front.bounds().top() - BETWEEN - plan.bounds().bottom();
        };
        AxialScale plain = AxialScale.of(scale);
        List<DrawnView> views = new ArrayList<>(List.of(
                new DrawnView(front, DrawnView.Shows.FRONT, plain, 0, 0),
                new DrawnView(plan, DrawnView.Shows.PLAN, plain, 0, down)));
        if (BlockView.needsLeft(block)) {
            Dimensioned left = new Dimensioned(BlockView.left(block, scale), List.of(), List.of());
            double across = switch (part.drafting().projection()) {
                case FIRST_ANGLE ->
                    front.bounds().right() + BETWEEN - left.bounds().left();
                case THIRD_ANGLE ->
                    front.bounds().left() - BETWEEN - left.bounds().right();
            };
            views.add(new DrawnView(left, DrawnView.Shows.LEFT, plain, across, 0));
        }
        return views;
    }
}
