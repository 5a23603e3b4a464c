package chargehand.book.part;

/**
 * A saved drawing with what it says.
 *
 * @param issue as it was saved
 * @param reading what it describes, or what is wrong with it
 */
public record DrawnPart(PartIssue issue, PartReading reading) {}
