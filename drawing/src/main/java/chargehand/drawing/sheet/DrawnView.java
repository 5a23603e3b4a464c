package chargehand.drawing.sheet;

import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.picture.ScaledSheet.Role;
import chargehand.drawing.view.AxialScale;
import java.util.List;

/**
 * A view with its sizes, and where it lies.
 *
 * @param view what is drawn, in its own frame
 * @param shows what it shows of the part
 * @param scale where the part's positions lie in its frame; of a view that is not along an axis only the scale counts
 * @param x of its frame's origin (mm)
 * @param y of its frame's origin (mm)
 */
public record DrawnView(Dimensioned view, Shows shows, AxialScale scale, double x, double y) {
    /** What a view shows of a part. */
    public enum Shows {
        /** A turned part along its axis. */
        SIDE,
        /** A turned part from one end. */
        END,
        /** A small place of a turned part along its axis, larger. */
        DETAIL,
        /** A section across the axis. */
        SECTION,
        /** A block from above: its length to the right, its width upward. */
        PLAN,
        /** A block from the front: its length to the right, its thickness upward. */
        FRONT,
        /** A block from the left: its width to the left, its thickness upward. */
        LEFT,
        /** No view: a table of what views leave out. */
        TABLE
    }

    Box bounds() {
        return view.bounds().moved(x, y);
    }

    DrawnView moved(double right, double down) {
        return new DrawnView(view, shows, scale, x + right, y + down);
    }

    /** Its marks where they lie. */
    public List<Mark> marks() {
        return placed(view.marks());
    }

    /** The same marks by what they are for. */
    List<ScaledSheet.Group> groups() {
        return List.of(
                new ScaledSheet.Group(Role.VIEW, placed(view.view().marks())),
                new ScaledSheet.Group(Role.SIZES, placed(view.sizes())));
    }

    private List<Mark> placed(List<Mark> marks) {
        return marks.stream().map(mark -> mark.moved(x, y)).toList();
    }
}
