package chargehand.book.part;

import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.Optional;

/**
 * A saved drawing with what it says.
 *
 * @param issue as it was saved
 * @param reading what it describes, or what is wrong with it
 */
public record DrawnPart(PartIssue issue, PartReading reading) {
    /** Reads what was saved. */
    public static DrawnPart of(PartIssue issue) {
        return new DrawnPart(issue, PartFile.read(issue.text()));
    }

    /** The part, where the drawing is without fault. */
    public Optional<Part> part() {
        return switch (reading) {
            case PartReading.Read read -> Optional.of(read.part());
            case PartReading.Faulty faulty -> Optional.empty();
        };
    }
}
