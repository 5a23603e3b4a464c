package chargehand.method.plan;

import chargehand.measure.WorkTime;
import chargehand.trade.sum.Step;
import java.util.List;

/**
 * One step in a set-up.
 *
 * @param number within the set-up, from 1
 * @param say what to do, in the imperative, such as "Turn to .825 for 5/8"
 * @param cut what it does to the work
 * @param settings how the machine is set for it
 * @param readings what to measure before going on
 * @param hold whether someone else must pass the readings before the next operation
 * @param cautions what to mind, beside the figures
 * @param time for one piece, gauging counted in
 * @param working why these figures
 */
public record Operation(
        int number,
        String say,
        Cut cut,
        Settings settings,
        List<Reading> readings,
        boolean hold,
        List<String> cautions,
        WorkTime time,
        List<Step> working) {
    public Operation {
        readings = List.copyOf(readings);
        cautions = List.copyOf(cautions);
        working = List.copyOf(working);
    }
}
