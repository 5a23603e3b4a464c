package chargehand.trade.material;

import chargehand.measure.Unreadable;
import chargehand.trade.table.Table;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every material the shop's tables know, found by how people write it: {@code EN 8}, {@code 080M40}, {@code Stainless
 * 316L}, {@code phosphor bronze (PB1)}. Case, spaces, hyphens and points do not matter. A general word means the usual
 * grade of it ("mild steel" is EN3B, "brass" is CZ121), taken in its weakest usual condition.
 */
public final class Materials {
    private static final List<Material> ALL = Table.read(Materials.class, "materials.csv").rows().stream()
            .map(MaterialRow::read)
            .toList();
    private static final Map<String, Material> BY_WORD = byWord();
    private static final int LONGEST_WRITTEN = 80;
    private static final int CLOSE = 2;
    private static final int MOST_SUGGESTIONS = 3;

    private Materials() {}

    /** All materials in the order of the table. */
    public static List<Material> list() {
        return ALL;
    }

    /**
     * The material a person means.
     *
     * @throws Unreadable naming close ones when it is not known
     */
    public static Material get(String written) {
        return find(written).orElseThrow(() -> unknown(written));
    }

    /**
     * The material a person means, if it is known and there is no doubt which: the whole text as a name, else the
     * longest name that stands in the text as whole words.
     */
    public static Optional<Material> find(String written) {
        if (written.length() > LONGEST_WRITTEN) {
            return Optional.empty();
        }
        Material whole = BY_WORD.get(squeezed(written));
        return whole != null ? Optional.of(whole) : findWithin(words(written));
    }

    private static Optional<Material> findWithin(List<String> words) {
        var found = new TreeMap<Integer, Map<String, Material>>(Comparator.reverseOrder());
        for (int from = 0; from < words.size(); from++) {
            for (int to = from + 1; to <= words.size(); to++) {
                String run = String.join("", words.subList(from, to));
                Material material = BY_WORD.get(run);
                if (material != null) {
                    found.computeIfAbsent(weight(run), w -> new HashMap<>()).put(material.name(), material);
                }
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Collection<Material> best = found.firstEntry().getValue().values();
        return best.size() == 1 ? best.stream().findFirst() : Optional.empty();
    }

    /** A grade with a figure in it says more than any general word, whatever its length. */
    private static int weight(String run) {
        return run.length() + (run.chars().anyMatch(Character::isDigit) ? LONGEST_WRITTEN : 0);
    }

    private static Map<String, Material> byWord() {
        var byWord = new HashMap<String, Material>();
        for (Material material : ALL) {
            enter(byWord, material.name(), material);
            material.aliases().forEach(alias -> enter(byWord, alias, material));
        }
        return Map.copyOf(byWord);
    }

    private static void enter(Map<String, Material> byWord, String name, Material material) {
        Material other = byWord.put(squeezed(name), material);
        if (other != null && !other.equals(material)) {
            throw new IllegalStateException("'" + name + "' stands for " + other.name() + " and " + material.name());
        }
    }

    private static String squeezed(String written) {
        return String.join("", words(written));
    }

    private static List<String> words(String written) {
        String plain = written.toLowerCase(Locale.ROOT).replaceAll("[-./]", "").replaceAll("[^a-z0-9]+", " ");
        return Arrays.stream(plain.trim().split(" ", -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static Unreadable unknown(String written) {
        String shown = written.length() > LONGEST_WRITTEN ? written.substring(0, LONGEST_WRITTEN) + "…" : written;
        List<String> close = close(squeezed(shown));
        String hint = close.isEmpty()
                ? "Write a grade such as EN8, 316, LG2, PB1 or CZ121."
                : "Did you mean " + String.join(" or ", close) + "?";
        return new Unreadable("'" + shown.trim() + "' is not a material in the table. " + hint);
    }

    private static List<String> close(String word) {
        return ALL.stream()
                .filter(material -> material.aliases().stream()
                        .anyMatch(alias -> Closeness.steps(squeezed(alias), word, CLOSE) <= allowed(alias)))
                .map(Material::name)
                .limit(MOST_SUGGESTIONS)
                .toList();
    }

    private static int allowed(String alias) {
        return alias.length() <= 4 ? 1 : CLOSE;
    }
}
