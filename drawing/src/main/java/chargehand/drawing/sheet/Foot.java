package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.part.Part;
import java.util.List;

/**
 * What stands at the foot of the sheet, at the right: the title block, on it the table of issues, above that the notes and,
 * at their right, the code that opens the job.
 *
 * @param part whose drawing it is
 * @param heading what else the title block says
 * @param issues the table
 * @param notes beside the code
 */
record Foot(Part part, Heading heading, IssueTable issues, Notes notes) {
    private static final double ABOVE = 4;
    private static final double INSET = 2;
    private static final Lettering SMALL = Lettering.height(2.5);

    static Foot of(Part part, Heading heading, List<String> fromSizes) {
        double beside = heading.code().map(Picture::width).orElse(0.0);
        double width = TitleBlock.WIDTH - beside - 2 * INSET;
        return new Foot(part, heading, IssueTable.of(part.drafting().issues()), Notes.of(part, fromSizes, width));
    }

    /** How high all of it is (mm). */
    double height() {
        double code = heading.code()
                .map(picture -> picture.height() + SMALL.linePitch())
                .orElse(0.0);
        return blockHeight() + Math.max(notes.height(), code);
    }

    private double blockHeight() {
        return TitleBlock.HEIGHT + issues.height();
    }

    /** Where title block and table of issues stand in a frame. */
    Box block(Box frame) {
        return new Box(frame.right() - TitleBlock.WIDTH, frame.bottom() - blockHeight(), frame.right(), frame.bottom());
    }

    /** Title block, table of issues and code in a frame. */
    List<Mark> marks(Box frame, DrawingScale scale) {
        Canvas canvas = new Canvas();
        TitleBlock.draw(canvas, new Point(frame.right(), frame.bottom()), part, heading, scale);
        Box block = block(frame);
        issues.draw(canvas, new Point(block.left(), block.top()));
        heading.code().ifPresent(code -> code(canvas, code, new Point(block.right(), block.top())));
        return canvas.marks();
    }

    /** The code with the job's name below it, for those who have no telephone at hand. */
    private void code(Canvas canvas, Picture code, Point corner) {
        canvas.place(code, corner.moved(-code.width(), -code.height() - SMALL.linePitch()));
        canvas.words(SMALL, corner.moved(-INSET, -INSET), Mark.Align.RIGHT, heading.job());
    }

    /** The notes in a frame. */
    List<Mark> noteMarks(Box frame) {
        Canvas canvas = new Canvas();
        Box block = block(frame);
        notes.draw(canvas, new Point(block.left() + INSET, block.top() - ABOVE));
        return canvas.marks();
    }
}
