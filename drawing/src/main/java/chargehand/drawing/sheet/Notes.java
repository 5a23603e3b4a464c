package chargehand.drawing.sheet;

import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/** The notes of a drawing, numbered, the same words wherever they are printed. */
final class Notes {
    private Notes() {}

    static List<String> of(Part part, List<String> fromSizes) {
        List<String> notes = new ArrayList<>();
        notes.add(
                part.unit() == LengthUnit.INCH
                        ? "Sizes in inches unless another unit is written. Inch limits are given to .0001."
                        : "Sizes in millimetres unless another unit is written.");
        notes.add("Sizes without limits: general tolerance " + part.general().text() + ".");
        notes.addAll(fromSizes);
        notes.addAll(part.notes());
        return notes;
    }
}
