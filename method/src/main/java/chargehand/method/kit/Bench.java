package chargehand.method.kit;

import chargehand.measure.LengthUnit;
import java.util.List;

/**
 * The fitting bench, for tapping by hand, deburring and marking out.
 *
 * @param vices on the bench
 */
public record Bench(String name, LengthUnit unit, List<Vice> vices) implements Machine {
    public Bench {
        vices = List.copyOf(vices);
    }
}
