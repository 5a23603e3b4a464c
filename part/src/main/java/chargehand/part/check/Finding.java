package chargehand.part.check;

/**
 * Something found about a part.
 *
 * @param path the keys that lead to the place, list entries counted from 1: {@code outside[2].length}
 * @param code what was found
 * @param say a plain sentence: what was found and what would do
 */
public record Finding<C extends Enum<C>>(String path, C code, String say) {}
