package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Twig;
import chargehand.part.yaml.tree.Twig.Branch;
import chargehand.part.yaml.tree.Twig.Leaf;
import chargehand.part.yaml.tree.Twig.Row;
import chargehand.part.yaml.tree.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A JSON Schema as far as ours go: {@code $ref}, {@code oneOf}, {@code type}, {@code enum}, {@code properties},
 * {@code required}, {@code additionalProperties: false}, {@code items} and {@code minItems}. Single values are judged as
 * texts, since the readers take them so.
 */
public final class Schema {
    private static final String DEFINITIONS = "#/$defs/";

    private final Branch root;

    private Schema(Branch root) {
        this.root = root;
    }

    /** Reads a schema; JSON is YAML. */
    public static Schema parse(String text) {
        return new Schema((Branch) tree(text));
    }

    /** The tree of a text that must be sound YAML. */
    public static Twig tree(String text) {
        Faults faults = new Faults();
        Twig twig = YamlTree.read(text, faults).orElseThrow();
        assertThat(faults.list()).isEmpty();
        return twig;
    }

    public boolean accepts(Twig twig) {
        return accepts(root, twig);
    }

    private boolean accepts(Branch schema, Twig twig) {
        Optional<String> reference = text(schema, "$ref");
        if (reference.isPresent()) {
            return accepts(definition(reference.get()), twig);
        }
        if (schema.entries().containsKey("oneOf")) {
            return items(schema, "oneOf").stream()
                            .filter(one -> accepts((Branch) one, twig))
                            .count()
                    == 1;
        }
        if (schema.entries().containsKey("enum")) {
            return twig instanceof Leaf leaf
                    && items(schema, "enum").stream()
                            .anyMatch(each -> text(each).equals(leaf.text()));
        }
        return switch (twig) {
            case Leaf leaf -> !leaf.text().isEmpty() && isScalar(schema);
            case Row row -> isType(schema, "array") && acceptsRow(schema, row);
            case Branch branch -> isType(schema, "object") && acceptsBranch(schema, branch);
        };
    }

    private Branch definition(String reference) {
        assertThat(reference).startsWith(DEFINITIONS);
        return branch(branch(root, "$defs"), reference.substring(DEFINITIONS.length()));
    }

    private boolean acceptsRow(Branch schema, Row row) {
        int least = text(schema, "minItems").map(Integer::valueOf).orElse(0);
        return row.items().size() >= least
                && row.items().stream().allMatch(item -> accepts(branch(schema, "items"), item));
    }

    private boolean acceptsBranch(Branch schema, Branch twig) {
        Map<String, Twig.Entry> properties = branch(schema, "properties").entries();
        boolean complete = items(schema, "required").stream()
                .allMatch(key -> twig.entries().containsKey(text(key)));
        return complete
                && twig.entries().keySet().stream().allMatch(properties::containsKey)
                && twig.entries().entrySet().stream()
                        .allMatch(entry -> accepts(
                                branch(branch(schema, "properties"), entry.getKey()),
                                entry.getValue().value()));
    }

    private static boolean isScalar(Branch schema) {
        Twig type = value(schema, "type");
        List<String> types =
                type instanceof Row row ? row.items().stream().map(Schema::text).toList() : List.of(text(type));
        return types.contains("string");
    }

    private static boolean isType(Branch schema, String wanted) {
        return value(schema, "type") instanceof Leaf leaf && leaf.text().equals(wanted);
    }

    private static Branch branch(Branch schema, String key) {
        return (Branch) value(schema, key);
    }

    private static List<Twig> items(Branch schema, String key) {
        return schema.entries().containsKey(key) ? ((Row) value(schema, key)).items() : List.of();
    }

    private static Twig value(Branch schema, String key) {
        return Objects.requireNonNull(schema.entries().get(key), key).value();
    }

    private static Optional<String> text(Branch schema, String key) {
        return schema.entries().containsKey(key) ? Optional.of(text(value(schema, key))) : Optional.empty();
    }

    private static String text(Twig leaf) {
        return ((Leaf) leaf).text();
    }

    /**
     * The texts made from a tree by one change of its keys: one renamed, one taken out, or one given another kind. Where a
     * list holds several things of a kind, the keys of the first are changed.
     */
    public static List<String> changes(Twig twig) {
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
