package chargehand.method.rack.yaml;

import chargehand.method.rack.Rack;
import chargehand.part.yaml.tree.Fault;
import java.util.List;

/** What came of reading a rack's file. */
public sealed interface RackRead {
    /** All of it stands. */
    record Sound(Rack rack) implements RackRead {}

    /**
     * Something does not.
     *
     * @param faults at least one, in the order of the file
     */
    record Refused(List<Fault> faults) implements RackRead {
        public Refused {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a refused rack has a fault");
            }
        }
    }
}
