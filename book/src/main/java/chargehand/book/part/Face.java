package chargehand.book.part;

import chargehand.part.Part;
import chargehand.part.yaml.PartReading;

/**
 * What the book needs to know of a drawing without reading it again.
 *
 * @param drawn whether it reads as a part without fault
 * @param title the part's title
 * @param drawing its drawing number, empty before it has one
 * @param issue its issue as written, such as "A"
 * @param material what it is made of
 */
public record Face(boolean drawn, String title, String drawing, String issue, String material) {
    /** The face of a draft with faults. */
    public static final Face FAULTY = new Face(false, "", "", "", "");

    /** The face of a drawing that reads so. */
    public static Face of(PartReading reading) {
        return switch (reading) {
            case PartReading.Read read -> of(read.part());
            case PartReading.Faulty faulty -> FAULTY;
        };
    }

    private static Face of(Part part) {
        return new Face(true, part.title(), part.drawing(), part.issue(), part.material());
    }
}
