package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Gathers the faults of one replay, each with the operation it was found at. */
final class FaultList {
    private final List<Fault> faults = new ArrayList<>();
    private final LengthUnit unit;
    private int setUp;
    private int operation;

    /**
     * An empty list.
     *
     * @param unit in which sizes are told
     */
    FaultList(LengthUnit unit) {
        this.unit = unit;
    }

    /** What is found from now on belongs to this operation; 0 stands for the set-up or the method as a whole. */
    void at(int inSetUp, int inOperation) {
        setUp = inSetUp;
        operation = inOperation;
    }

    /**
     * Adds a fault.
     *
     * @param say what is wrong, as a clause
     */
    void add(Fault.Code code, String say) {
        String sentence = Character.toUpperCase(say.charAt(0)) + say.substring(1) + ".";
        faults.add(new Fault(code, setUp, operation, sentence));
    }

    /** Adds a fault unless {@code holds}. Returns {@code holds}. */
    boolean unless(boolean holds, Fault.Code code, Supplier<String> say) {
        if (!holds) {
            add(code, say.get());
        }
        return holds;
    }

    /** A size for a sentence. */
    String size(Length length) {
        return LengthText.both(length, unit);
    }

    List<Fault> list() {
        return List.copyOf(faults);
    }
}
