package chargehand.method.plan;

import chargehand.measure.WorkTime;
import chargehand.trade.sum.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * One holding of the work on one machine; everything done in it is true to itself.
 *
 * @param number from 1
 * @param machine the machine's name in the kit
 * @param holding how the work is held
 * @param instructions how to set it up, in order, before the first operation
 * @param operations in order, at least one
 * @param setting the time to set the machine up, once for the whole count
 * @param loading the time to load, true and unload one piece
 * @param working grip, overhang, run-out and clearance as worked out
 */
public record SetUp(
        int number,
        String machine,
        Holding holding,
        List<String> instructions,
        List<Operation> operations,
        WorkTime setting,
        WorkTime loading,
        List<Step> working) {
    public SetUp {
        instructions = List.copyOf(instructions);
        operations = List.copyOf(operations);
        working = List.copyOf(working);
    }

    /** The same set-up with another time to set it. */
    public SetUp withSetting(WorkTime time) {
        return new SetUp(number, machine, holding, instructions, operations, time, loading, working);
    }

    /** The same set-up in another place of the method. */
    public SetUp withNumber(int place) {
        return new SetUp(place, machine, holding, instructions, operations, setting, loading, working);
    }

    /** The same set-up with one more instruction. */
    public SetUp withInstruction(String instruction) {
        var all = new ArrayList<>(instructions);
        all.add(instruction);
        return new SetUp(number, machine, holding, all, operations, setting, loading, working);
    }

    /** The time for so many pieces. */
    public WorkTime time(int count) {
        WorkTime each = operations.stream().map(Operation::time).reduce(loading, WorkTime::plus);
        return setting.plus(each.times(count));
    }
}
