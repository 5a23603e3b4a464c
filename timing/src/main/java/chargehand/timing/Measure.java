package chargehand.timing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

/** Measures everything there is to measure, prints the tables and keeps them; or prints only what is named. */
public final class Measure {
    private static final String PARTS = "parts";

    private Measure() {}

    /**
     * Measures.
     *
     * @param args the folder of the project, the file to keep the tables in, and what to measure, by name, if not everything;
     *     only the tables of everything are kept
     */
    public static void main(String... args) throws Exception {
        Path root = Path.of(args[0]);
        List<String> chosen = List.of(args).subList(2, args.length);
        Map<String, Callable<List<Measured>>> kinds = kinds(root);
        for (String name : chosen) {
            if (!kinds.containsKey(name) && !name.equals(PARTS)) {
                System.err.println("'" + name + "' is nothing that is measured: " + String.join(", ", kinds.keySet())
                        + ", " + PARTS + ".");
                System.exit(2);
            }
        }
        var report = new Report();
        head(report);
        var measured = new ArrayList<Measured>();
        for (Map.Entry<String, Callable<List<Measured>>> kind : kinds.entrySet()) {
            if (chosen.isEmpty() || chosen.contains(kind.getKey())) {
                measured.addAll(kind.getValue().call());
            }
        }
        report.table(measured);
        if (chosen.isEmpty() || chosen.contains(PARTS)) {
            report.say("");
            PartTimes.report(root.resolve("demo"), report);
        }
        if (chosen.isEmpty()) {
            Files.writeString(Path.of(args[1]), report.text());
        }
    }

    private static Map<String, Callable<List<Measured>>> kinds(Path root) {
        var kinds = new LinkedHashMap<String, Callable<List<Measured>>>();
        kinds.put("commands", () -> CommandTimes.measured(new Program(root.resolve("chargehand"))));
        kinds.put("pages", () -> PageTimes.measured(root));
        kinds.put("wheels", WheelTimes::measured);
        kinds.put("name-thread", NameThreadTimes::measured);
        kinds.put("bars", BarTimes::measured);
        kinds.put("packer", PackerTimes::measured);
        kinds.put("drawing", DrawingTimes::measured);
        kinds.put("edit", () -> EditTimes.measured(root));
        kinds.put("book", BookTimes::measured);
        kinds.put("plans", () -> PlanTimes.measured(root.resolve("demo")));
        return kinds;
    }

    private static void head(Report report) {
        report.say("# Measured");
        report.say("");
        report.say("The last run of `./measure`, on " + Machine.description() + ".");
        report.say(
                "Each figure is the median of so many runs, by the clock; in brackets what it had of a processor, which");
        report.say(
                "is near what the clock would say on a machine with nothing else to do. Load is of the last minute; beyond");
        report.say(
                "the number of processors other programs were in the way. Commands are timed from the call to their end.");
        report.say("");
    }
}
