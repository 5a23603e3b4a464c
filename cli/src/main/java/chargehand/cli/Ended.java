package chargehand.cli;

/** How a command ended, as the number it hands back to the shell. */
public final class Ended {
    /** It did what was asked. */
    public static final int ANSWERED = 0;

    /** It was asked something it cannot answer as it stands; what would do was said. */
    public static final int ASKED_WRONGLY = 2;

    /** A file, a disk or the program itself failed. */
    public static final int WORLD_FAILED = 3;

    private Ended() {}
}
