package chargehand.book.use;

/** What a job waits for somebody to do. */
public enum NextStep {
    /** Draw the part. */
    DRAW,
    /** Put right what is wrong in the drawing. */
    MEND_DRAWING,
    /** Have a method worked out. */
    PLAN,
    /** See why it cannot be made here and what would make it possible. */
    UNLOCK,
    /** Begin the work. */
    BEGIN,
    /** Go on with the work. */
    GO_ON,
    /** The work is done: say that it is to be proved. */
    PROVE,
    /** Prove it and pass it. */
    PASS,
    /** Send it out. */
    SEND_OUT,
    /** Wait for what it was stopped for. */
    WAIT,
    /** Nothing: it has gone out or is not wanted. */
    NOTHING
}
