package chargehand.trade.dividing;

import chargehand.measure.Angle;
import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A way of dividing beside what was wanted.
 *
 * @param way how the crank is moved
 * @param error how far the work goes too far at each move, exactly, in turns of the work; negative for not far enough
 */
public record Indexed(Way way, BigFraction error) {
    private static final int DEGREES_IN_TURN = 360;

    /** Exact before near, then the simpler kind, then by the size of what is counted. */
    public static final Comparator<Indexed> BEST_FIRST = Comparator.comparing((Indexed indexed) -> indexed.error.abs())
            .thenComparingInt(indexed -> simplicity(indexed.way))
            .thenComparingInt(indexed -> counted(indexed.way));

    public boolean exact() {
        return error.signum() == 0;
    }

    /** The error of one move at the work. */
    public Angle errorAtWork() {
        return Angle.degrees(error.multiply(DEGREES_IN_TURN).doubleValue());
    }

    private static int simplicity(Way way) {
        return switch (way) {
            case Way.Plain plain -> 0;
            case Way.Compound compound -> 1;
            case Way.Differential differential -> differential.gears().stud().isPresent() ? 3 : 2;
        };
    }

    private static int counted(Way way) {
        return switch (way) {
            case Way.Plain plain -> plain.circle();
            case Way.Compound compound -> compound.counted();
            case Way.Differential differential -> differential.move().circle();
        };
    }
}
