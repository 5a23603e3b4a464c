package chargehand.trade.packer;

/** What the tests so far come to. */
sealed interface Verdict {
    /** Make this packer and test again. */
    record GoOn(NextPacker next) implements Verdict {}

    /** The last test was inside: leave the packer as it is. */
    record Inside(NextPacker kept) implements Verdict {}

    /** Do not go on, and why. */
    record Stop(String why) implements Verdict {}
}
