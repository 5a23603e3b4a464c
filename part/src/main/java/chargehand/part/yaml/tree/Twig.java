package chargehand.part.yaml.tree;

import java.util.List;
import java.util.Map;

/** A piece of a file: a text, a list, or entries under keys. Numbers and the like are texts, as they were written. */
public sealed interface Twig {
    Place place();

    /** What a person would call this kind of piece. */
    String kind();

    /**
     * A text as written.
     *
     * @param text empty where nothing stands
     * @param remarked whether nothing stands but a remark, which begins with #
     */
    record Leaf(Place place, String text, boolean remarked) implements Twig {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "a single value";
        }
    }

    /** Entries of a list in order. */
    record Row(Place place, List<Twig> items) implements Twig {
        public Row {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** Entries by key, in the order of the file. */
    record Branch(Place place, Map<String, Entry> entries) implements Twig {
        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    /**
     * What stands under a key.
     *
     * @param key where the key itself stands
     */
    record Entry(Place key, Twig value) {}
}
