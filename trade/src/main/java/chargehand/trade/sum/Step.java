package chargehand.trade.sum;

/**
 * One step of working, to be followed with a pencil.
 *
 * @param say what is being worked out, in words
 * @param formula the rule in symbols, empty for a look-up
 * @param numbers the same with the numbers in it, empty for a look-up
 * @param result what comes out, with its unit
 * @param source where the rule comes from
 */
public record Step(String say, String formula, String numbers, String result, Source source) {}
