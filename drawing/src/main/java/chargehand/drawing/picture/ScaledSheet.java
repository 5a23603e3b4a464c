package chargehand.drawing.picture;

import chargehand.measure.LengthUnit;
import java.util.List;

/**
 * A sheet drawn to scale, with what its picture alone does not tell: which marks are the thing itself, how they are scaled
 * and where its zero lies. Whatever takes the drawing at full size needs that.
 *
 * @param width of the sheet (mm)
 * @param height of the sheet (mm)
 * @param title as of a {@link Picture}
 * @param scale paper over thing, more than zero: 0.5 for 1:2
 * @param unit in which the sizes are written
 * @param zero where the origin of the main view lies on the sheet
 * @param groups what is drawn, first undermost
 * @param remarks what must be known before lengths are taken from the drawing, one sentence each
 */
public record ScaledSheet(
        double width,
        double height,
        String title,
        double scale,
        LengthUnit unit,
        Point zero,
        List<Group> groups,
        List<String> remarks) {
    public ScaledSheet {
        groups = List.copyOf(groups);
        remarks = List.copyOf(remarks);
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a scale is more than zero, not " + scale);
        }
    }

    /** What marks are for. */
    public enum Role {
        /** Frame, title block, notes. */
        SHEET,
        /** What is seen of the thing. */
        VIEW,
        /** The sizes written at it. */
        SIZES
    }

    /** Marks of one role. */
    public record Group(Role role, List<Mark> marks) {
        public Group {
            marks = List.copyOf(marks);
        }
    }

    /** The sheet as one picture. */
    public Picture picture() {
        return new Picture(
                width,
                height,
                title,
                groups.stream().flatMap(group -> group.marks().stream()).toList());
    }
}
