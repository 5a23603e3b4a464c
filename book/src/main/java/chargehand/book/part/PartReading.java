package chargehand.book.part;

import chargehand.book.Objection;
import chargehand.part.Part;
import java.util.List;

/** What came of reading a drawing as it was written. */
public sealed interface PartReading {
    /** It describes a part that can be made somewhere. */
    record Drawn(Part part) implements PartReading {}

    /** It does not, for every one of these reasons; an objection's field is the place in the text. */
    record Faulty(List<Objection> objections) implements PartReading {
        public Faulty {
            objections = List.copyOf(objections);
        }
    }

    /** What the job book keeps of it. */
    default PartIssue.Face face() {
        return switch (this) {
            case Drawn(Part part) -> new PartIssue.Face(true, part.title(), part.drawing(), part.material());
            case Faulty faulty -> PartIssue.Face.FAULTY;
        };
    }
}
