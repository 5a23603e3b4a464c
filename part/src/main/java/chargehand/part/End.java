package chargehand.part;

/** One of the two ends of a turned part; sections are listed from A to B. */
public enum End {
    A,
    B;

    public End other() {
        return this == A ? B : A;
    }
}
