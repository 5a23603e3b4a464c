package chargehand.part.yaml;

import chargehand.part.Part;
import chargehand.part.yaml.tree.Fault;
import java.util.List;

/** What came of reading a part file. */
public sealed interface PartReading {
    /** The part, with what a draughtsman would still point out. */
    record Read(Part part, List<Remark> remarks) implements PartReading {
        public Read {
            remarks = List.copyOf(remarks);
        }
    }

    /** Everything that must be mended first, in the order of the file; at least one fault. */
    record Faulty(List<Fault> faults) implements PartReading {
        public Faulty {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a faulty file has a fault");
            }
        }
    }
}
