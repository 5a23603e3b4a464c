package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.method.kit.Gauge;
import chargehand.method.kit.Gauge.Measures;
import chargehand.method.kit.Gauge.ThreadForm;
import java.util.List;
import java.util.Optional;

/** Reads one gauge; its bare numbers are in its own unit where it names one. */
final class GaugeForm {
    /** The kinds of gauges that can be described. */
    static final List<String> KINDS =
            List.of("rule", "caliper", "micrometer", "indicator", "protractor", "plug", "thread-gauge", "pitch-gauges");

    private static final List<String> KEYS =
            List.of("unit", "longest", "resolves", "measures", "range", "size", "limits", "thread", "form", "angle");

    private GaugeForm() {}

    static Optional<Gauge> read(KitForm inFileUnit) {
        KitForm row = inFileUnit.inOwnUnit();
        String kind = row.kind(KINDS, KEYS);
        return kind.isEmpty() ? Optional.empty() : gauge(row, kind);
    }

    private static Optional<Gauge> gauge(KitForm row, String kind) {
        String name = row.nameOf(kind);
        return switch (kind) {
            case "rule" -> rule(row, name);
            case "caliper" -> caliper(row, name);
            case "micrometer" -> micrometer(row, name);
            case "indicator" -> indicator(row, name);
            case "protractor" -> protractor(row, name);
            case "plug" -> plug(row, name);
            case "thread-gauge" -> threadGauge(row, name);
            case "pitch-gauges" -> pitchGauges(row, name);
            default -> throw new IllegalStateException("no gauge is written as " + kind);
        };
    }

    private static Optional<Gauge> rule(KitForm row, String name) {
        Length longest = row.length("longest");
        Length resolves = row.length("resolves");
        return row.build(() -> new Gauge.Rule(name, row.unit(), longest, resolves));
    }

    private static Optional<Gauge> caliper(KitForm row, String name) {
        Length longest = row.length("longest");
        Length resolves = row.length("resolves");
        return row.build(() -> new Gauge.Caliper(name, row.unit(), longest, resolves));
    }

    private static Optional<Gauge> micrometer(KitForm row, String name) {
        Measures side = row.word("measures", Measures.OUTSIDE);
        var range = row.span("range");
        Length resolves = row.length("resolves");
        return row.build(() -> new Gauge.Micrometer(name, row.unit(), side, range, resolves));
    }

    private static Optional<Gauge> indicator(KitForm row, String name) {
        Length resolves = row.length("resolves");
        return row.build(() -> new Gauge.Indicator(name, row.unit(), resolves));
    }

    private static Optional<Gauge> protractor(KitForm row, String name) {
        var resolves = row.angle("resolves");
        return row.build(() -> new Gauge.Protractor(name, resolves));
    }

    private static Optional<Gauge> plug(KitForm row, String name) {
        Length size = row.length("size");
        String limits = row.keys().value("limits", text -> KitText.holeClass(text, size), "");
        return row.build(() -> new Gauge.Plug(name, size, limits));
    }

    private static Optional<Gauge> threadGauge(KitForm row, String name) {
        String thread = row.keys().value("thread", KitText::thread, "");
        ThreadForm form = row.word("form", ThreadForm.class);
        return row.build(() -> new Gauge.ThreadGauge(name, thread, form));
    }

    private static Optional<Gauge> pitchGauges(KitForm row, String name) {
        var angle = row.angle("angle");
        return row.build(() -> new Gauge.PitchGauges(name, angle));
    }
}
