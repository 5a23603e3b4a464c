package chargehand.part.yaml.tree;

import java.util.ArrayList;
import java.util.List;

/** Gathers what is wrong with a file, so that it can all be said in one go. */
public final class Faults {
    private final List<Fault> faults = new ArrayList<>();

    public void add(Place place, Enum<?> code, String say) {
        faults.add(Fault.at(place, code, say));
    }

    public boolean isEmpty() {
        return faults.isEmpty();
    }

    int count() {
        return faults.size();
    }

    /** The faults in the order of the file. */
    public List<Fault> list() {
        return faults.stream()
                .sorted((a, b) -> a.line() != b.line()
                        ? Integer.compare(a.line(), b.line())
                        : Integer.compare(a.column(), b.column()))
                .toList();
    }
}
