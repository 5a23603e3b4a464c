package chargehand.trade.sum;

/**
 * One thing a sum answers.
 *
 * @param name the key in the answer
 * @param label what a person calls it
 * @param always whether every answer has it
 * @param fine whether its lengths are shown to a tenth of a thou and a micrometre, as limits and fits are, and not to a
 *     thou and a hundredth of a millimetre
 */
public record Result(String name, String label, boolean always, boolean fine) {
    public Result(String name, String label, boolean always) {
        this(name, label, always, false);
    }

    public static Result always(String name, String label) {
        return new Result(name, label, true);
    }

    public static Result sometimes(String name, String label) {
        return new Result(name, label, false);
    }

    /** The same, shown finely. */
    public Result shownFine() {
        return new Result(name, label, always, true);
    }
}
