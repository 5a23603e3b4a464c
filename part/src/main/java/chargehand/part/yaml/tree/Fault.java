package chargehand.part.yaml.tree;

/**
 * Something in a file that cannot stand.
 *
 * @param line counted from 1
 * @param column counted from 1
 * @param path the keys that lead to it, list entries counted from 1: {@code outside[2].length}; empty for the whole file
 * @param code what kind of fault it is
 * @param say a plain sentence for the person who wrote the file: what was found and what would do
 */
public record Fault(int line, int column, String path, Enum<?> code, String say) {
    static Fault at(Place place, Enum<?> code, String say) {
        return new Fault(place.line(), place.column(), place.path(), code, say);
    }
}
