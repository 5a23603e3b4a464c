package chargehand.book.part;

/** Reads a drawing as it is written. */
@FunctionalInterface
public interface PartReader {
    /** What the text describes, or everything that is wrong with it; never an exception, whatever the text. */
    PartReading read(String text);
}
