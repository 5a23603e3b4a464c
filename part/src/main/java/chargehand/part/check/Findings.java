package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Gathers what is found about a part. */
public final class Findings {
    private final LengthUnit unit;
    private final List<Finding<PartFault>> faults = new ArrayList<>();
    private final List<Finding<PartRemark>> remarks = new ArrayList<>();

    Findings(LengthUnit unit) {
        this.unit = unit;
    }

    /** Why the part cannot stand; empty when it can. */
    public List<Finding<PartFault>> faults() {
        return List.copyOf(faults);
    }

    /** What else is to be said. */
    public List<Finding<PartRemark>> remarks() {
        return List.copyOf(remarks);
    }

    /** Whether nothing was found that speaks against the part. */
    public boolean isSound() {
        return faults.isEmpty();
    }

    boolean anyIs(PartFault code) {
        return faults.stream().anyMatch(fault -> fault.code() == code);
    }

    void fault(String path, PartFault code, String say) {
        faults.add(new Finding<>(path, code, say));
    }

    void remark(String path, PartRemark code, String say) {
        remarks.add(new Finding<>(path, code, say));
    }

    /** A length as the sentences print it, in the unit of the drawing. */
    String say(Length length) {
        return LengthText.in(length, unit);
    }
}
