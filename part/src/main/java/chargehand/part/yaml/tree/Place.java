package chargehand.part.yaml.tree;

/**
 * Where something stands in a file.
 *
 * @param path the keys that lead to it, list entries counted from 1: {@code outside[2].length}; empty for the whole file
 * @param line counted from 1
 * @param column counted from 1
 */
public record Place(String path, int line, int column) {
    /** The beginning of a file. */
    static final Place START = new Place("", 1, 1);

    /** The path of what stands under a key here. */
    public String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** The path of the list entry of this number, counted from 1. */
    public String pathOf(int number) {
        return path + "[" + number + "]";
    }
}
