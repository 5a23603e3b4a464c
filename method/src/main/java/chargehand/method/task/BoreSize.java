package chargehand.method.task;

import chargehand.measure.Length;
import chargehand.part.Bore;

/** The diameter by which bores are put in order: what the hole measures before any thread, at its widest. */
final class BoreSize {
    private BoreSize() {}

    static Length of(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> drilled.diameter().length();
            case Bore.Bored bored -> bored.diameter().length();
            case Bore.Reamed reamed -> reamed.diameter().length();
            case Bore.Counterbored counterbored -> counterbored.diameter().length();
            case Bore.Tapped tapped -> tapped.thread().minorInternal();
            case Bore.Coned coned -> coned.mouth().length();
        };
    }
}
