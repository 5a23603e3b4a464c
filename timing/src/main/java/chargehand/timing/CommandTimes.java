package chargehand.timing;

import chargehand.trade.sum.Example;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sums by command, each in a process of its own, the launcher included. */
final class CommandTimes {
    private static final int LINES = 1_000;

    private CommandTimes() {}

    static List<Measured> measured(Program program) throws Exception {
        List<String> lines = lines(LINES);
        Stopwatch one =
                Stopwatch.outside(2, 15, () -> program.run(List.of(), "sum", "size", "size=1 3/8", "--unit", "in"));
        Stopwatch first = Stopwatch.outside(2, 9, () -> program.run(lines.subList(0, 1), "sums"));
        Stopwatch thousand = Stopwatch.outside(1, 9, () -> {
            List<String> answers = program.run(lines, "sums");
            if (answers.size() != LINES || !answers.stream().allMatch(answer -> answer.contains("\"answer\":{"))) {
                throw new IllegalStateException("not every line was answered");
            }
            return answers;
        });
        return List.of(
                Measured.of("one sum by command", one).aim("0.2 s"),
                Measured.of("1,000 sums as JSON lines, start included", thousand),
                Measured.of("the same after start", Stopwatch.seconds(thousand.median() - first.median()))
                        .aim("1 s"));
    }

    /** So many lines, taken in turn from the examples of every sum. */
    private static List<String> lines(int count) throws IOException {
        var asks = new ArrayList<Map<String, Object>>();
        for (Sum sum : Sums.load().list()) {
            for (Example example : sum.examples()) {
                var line = new LinkedHashMap<String, Object>();
                line.put("sum", sum.name());
                line.put("ask", example.ask());
                asks.add(line);
            }
        }
        var lines = new ArrayList<String>();
        for (int id = 0; id < count; id++) {
            var line = new LinkedHashMap<String, Object>();
            line.put("id", id);
            line.putAll(asks.get(id % asks.size()));
            lines.add(JSON.std.asString(line));
        }
        return lines;
    }
}
