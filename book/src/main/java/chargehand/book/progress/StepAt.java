package chargehand.book.progress;

/**
 * One operation on one piece.
 *
 * @param setUp the number of the set-up in the method, from 1
 * @param operation the number of the operation in the set-up, from 1
 * @param piece which of the count, from 1
 */
public record StepAt(int setUp, int operation, int piece) {
    @Override
    public String toString() {
        return "operation " + setUp + "." + operation + ", piece " + piece;
    }
}
