package chargehand.timing;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;

/** The machine that is measured on. */
final class Machine {
    private Machine() {}

    /** How many are wanting a processor, over the last minute: beyond the number of processors, times are too long. */
    static String load() {
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        return load < 0 ? "not told" : String.format(Locale.ROOT, "%.1f", load);
    }

    static String description() {
        return LocalDate.now(ZoneOffset.UTC) + ", " + Runtime.getRuntime().availableProcessors() + " processors, "
                + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", Java " + Runtime.version();
    }
}
