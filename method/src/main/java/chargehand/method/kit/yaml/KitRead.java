package chargehand.method.kit.yaml;

import chargehand.method.kit.Kit;
import java.util.List;

/** What came of reading a kit's files. */
public sealed interface KitRead {
    /** All of it stands. */
    record Sound(Kit kit) implements KitRead {}

    /**
     * Something does not.
     *
     * @param faults at least one, by file and then in the order of the file
     */
    record Refused(List<FileFault> faults) implements KitRead {
        public Refused {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a refused kit has a fault");
            }
        }
    }
}
