package chargehand.drawing.sheet;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Picture;
import chargehand.part.Part;
import java.util.List;

/**
 * A part's finished sheet, and what its layout knows of it.
 *
 * @param part what is drawn
 * @param picture all that is on the sheet
 * @param frame what everything lies within
 * @param titleBlock where the title block stands
 * @param views the views where they lie on the sheet
 * @param notes as they are printed, one after the other
 */
public record DrawnSheet(
        Part part, Picture picture, Box frame, Box titleBlock, List<DrawnView> views, List<String> notes) {
    public DrawnSheet {
        views = List.copyOf(views);
        notes = List.copyOf(notes);
    }
}
