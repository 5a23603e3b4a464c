package chargehand.trade.sum;

/**
 * One thing a sum answers.
 *
 * @param name the key in the answer
 * @param label what a person calls it
 * @param always whether every answer has it
 */
public record Result(String name, String label, boolean always) {
    public static Result always(String name, String label) {
        return new Result(name, label, true);
    }

    public static Result sometimes(String name, String label) {
        return new Result(name, label, false);
    }
}
