package chargehand.timing;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Measures everything there is to measure, prints the table and keeps it. */
public final class Measure {
    private Measure() {}

    /**
     * Measures.
     *
     * @param args the launcher, and the file to keep the table in
     */
    public static void main(String... args) throws Exception {
        var program = new Program(Path.of(args[0]));
        var measured = new ArrayList<Measured>();
        measured.addAll(CommandTimes.measured(program));
        measured.addAll(WheelTimes.measured());
        String table = table(measured);
        System.out.print(table);
        Files.writeString(Path.of(args[1]), table);
    }

    private static String table(List<Measured> lines) {
        var table = new StringBuilder("# Measured\n\n")
                .append("The last run of `./measure`, on " + machine() + ".\n")
                .append(
                        "Times of commands are from the shell's call to the end of the process. Middle of several runs.\n\n")
                .append("| what | took | aim | beside it |\n| --- | --- | --- | --- |\n");
        for (Measured line : lines) {
            table.append("| ")
                    .append(String.join(" | ", line.what(), line.took(), line.aim(), line.beside()))
                    .append(" |\n");
        }
        return table.toString();
    }

    private static String machine() {
        return LocalDate.now(ZoneOffset.UTC) + ", " + Runtime.getRuntime().availableProcessors() + " processors, "
                + String.format(
                        Locale.ROOT,
                        "load %.1f, ",
                        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage())
                + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", Java " + Runtime.version();
    }
}
