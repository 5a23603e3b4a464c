package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Locale;
import java.util.Optional;

/** Limits of parallel pipe threads, ISO 228-1: class A or B outside, one class inside. */
final class PipeTolerances {
    private static final Source SOURCE = Source.memory("ISO 228-1:2000");

    private PipeTolerances() {}

    static ThreadLimits limits(ScrewThread thread, String fit) {
        String written = fit.isBlank() ? "A" : fit.strip().toUpperCase(Locale.ROOT);
        if (!written.equals("A") && !written.equals("B")) {
            throw new Unreadable("'" + fit + "' is not a class of parallel pipe thread: write A or B.");
        }
        Row row = row(thread);
        Length effectiveInside = Length.mm(row.number("effective_A"));
        Length effectiveOutside = effectiveInside.times(written.equals("A") ? 1 : 2);
        var external = new DiameterLimits(
                SizeLimits.below(thread.major(), Length.mm(row.number("major_outside"))),
                SizeLimits.below(thread.effective(), effectiveOutside),
                SizeLimits.atMost(thread.minor()));
        var internal = new DiameterLimits(
                SizeLimits.atLeast(thread.major()),
                SizeLimits.above(thread.effective(), effectiveInside),
                SizeLimits.above(thread.minorInternal(), Length.mm(row.number("minor_inside"))));
        return new ThreadLimits(written, Optional.of(external), Optional.of(internal), SOURCE);
    }

    private static Row row(ScrewThread thread) {
        return Listed.TABLE.rows().stream()
                .filter(row -> row.number("tpi") == thread.pitch().tpi().doubleValue()
                        && thread.major().mm() <= row.number("up_to"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no tolerance for " + thread));
    }

    private static final class Listed {
        private static final Table TABLE = Table.read(PipeTolerances.class, "pipe-tolerances.csv");
    }
}
