package chargehand.timing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;

/** Measures everything there is to measure, prints the tables and keeps them. */
public final class Measure {
    private Measure() {}

    /**
     * Measures.
     *
     * @param args the folder of the project, and the file to keep the tables in
     */
    public static void main(String... args) throws Exception {
        Path root = Path.of(args[0]);
        var report = new Report();
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
        var measured = new ArrayList<Measured>();
        measured.addAll(CommandTimes.measured(new Program(root.resolve("chargehand"))));
        measured.addAll(PageTimes.measured(root));
        measured.addAll(WheelTimes.measured());
        measured.addAll(NameThreadTimes.measured());
        measured.addAll(BookTimes.measured());
        report.table(measured);
        report.say("");
        PartTimes.report(root.resolve("demo"), report);
        Files.writeString(Path.of(args[1]), report.text());
    }
}
