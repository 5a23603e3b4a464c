package chargehand.method.kit.yaml;

import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Twig;
import chargehand.part.yaml.tree.Twig.Branch;
import chargehand.part.yaml.tree.Twig.Leaf;
import chargehand.part.yaml.tree.Twig.Row;
import chargehand.part.yaml.tree.YamlTree;
import java.util.ArrayList;
import java.util.List;

/** Files like a given one but for one key. */
public final class KeyChanges {
    private KeyChanges() {}

    /** The changes of a text that must be sound YAML. */
    public static List<String> of(String text) {
        return changes(YamlTree.read(text, new Faults()).orElseThrow());
    }

    /**
     * The texts made from a tree by one change of its keys: one renamed, one taken out, or one given another kind. Where a
     * list holds several things of a kind, the keys of the first are changed.
     */
    private static List<String> changes(Twig twig) {
        List<String> marks = new ArrayList<>();
        mark(twig, marks);
        List<String> changes = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.indexOf(marks.get(i)) == i) {
                for (Change change : Change.values()) {
                    changes.add(new Writer(i, change).write(twig));
                }
            }
        }
        return changes;
    }

    /** Notes for each key, in the order of writing, where it stands: numbers in lists left out, the kind of thing put in. */
    private static void mark(Twig twig, List<String> marks) {
        switch (twig) {
            case Leaf leaf -> {}
            case Row row -> row.items().forEach(item -> mark(item, marks));
            case Branch branch -> {
                String kind = branch.entries().keySet().stream().findFirst().orElse("");
                branch.entries().forEach((key, entry) -> {
                    marks.add(branch.place().path().replaceAll("\\d+", "") + " " + kind + " " + key);
                    mark(entry.value(), marks);
                });
            }
        }
    }

    private enum Change {
        RENAMED,
        TAKEN_OUT,
        TEXT,
        LIST,
        GROUP
    }

    /** Writes a tree as flow YAML with every text in quotes, the key of one number changed. */
    private static final class Writer {
        private final int changed;
        private final Change change;
        private int number;

        Writer(int changed, Change change) {
            this.changed = changed;
            this.change = change;
        }

        String write(Twig twig) {
            return switch (twig) {
                case Leaf leaf -> quoted(leaf.text());
                case Row row ->
                    "["
                            + String.join(
                                    ", ", row.items().stream().map(this::write).toList()) + "]";
                case Branch branch -> {
                    List<String> entries = new ArrayList<>();
                    branch.entries().forEach((key, entry) -> entry(key, entry.value(), entries));
                    yield "{" + String.join(", ", entries) + "}";
                }
            };
        }

        private void entry(String key, Twig value, List<String> entries) {
            boolean here = number++ == changed;
            String written = write(value);
            if (!here) {
                entries.add(quoted(key) + ": " + written);
                return;
            }
            switch (change) {
                case RENAMED -> entries.add(quoted(key + "zz") + ": " + written);
                case TAKEN_OUT -> {}
                case TEXT -> entries.add(quoted(key) + ": " + (value instanceof Leaf ? written : quoted("some text")));
                case LIST -> entries.add(quoted(key) + ": " + (value instanceof Row ? written : "[]"));
                case GROUP -> entries.add(quoted(key) + ": " + (value instanceof Branch ? written : "{}"));
            }
        }

        private static String quoted(String text) {
            return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
        }
    }
}
