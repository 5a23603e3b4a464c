package chargehand.part.yaml.tree;

import java.util.HashMap;
import java.util.Map;

/** Finds the place in a file that a path leads to. */
public final class Places {
    private final Map<String, Place> byPath = new HashMap<>();

    public Places(Twig tree) {
        add(tree);
    }

    private void add(Twig twig) {
        byPath.put(twig.place().path(), twig.place());
        switch (twig) {
            case Twig.Leaf leaf -> {}
            case Twig.Row row -> row.items().forEach(this::add);
            case Twig.Branch branch -> branch.entries().values().forEach(entry -> add(entry.value()));
        }
    }

    /** The place of a path or, where the file has nothing there, of the nearest thing around it, under the path asked for. */
    public Place nearest(String path) {
        String shorter = path;
        while (!byPath.containsKey(shorter) && !shorter.isEmpty()) {
            shorter = shorter.substring(0, Math.max(0, Math.max(shorter.lastIndexOf('.'), shorter.lastIndexOf('['))));
        }
        Place place = byPath.getOrDefault(shorter, Place.START);
        return new Place(path, place.line(), place.column());
    }
}
