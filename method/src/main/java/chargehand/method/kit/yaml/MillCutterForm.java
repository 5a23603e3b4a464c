package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.method.kit.MillCutter;
import java.util.List;
import java.util.Optional;

/** Reads one cutter of a mill. */
final class MillCutterForm {
    /** The kinds of cutters that can be described. */
    static final List<String> KINDS = List.of("end-mill", "slot-drill", "face-mill", "slitting-saw");

    private static final List<String> KEYS = List.of("diameter", "teeth", "reach", "thickness");

    private static final int MOST_TEETH = 300;

    private MillCutterForm() {}

    static Optional<MillCutter> read(KitForm row) {
        String kind = row.kind(KINDS, KEYS);
        return kind.isEmpty() ? Optional.empty() : cutter(row, kind);
    }

    private static Optional<MillCutter> cutter(KitForm row, String kind) {
        String name = row.nameOf(kind);
        Length diameter = row.length("diameter");
        int teeth = row.count("teeth", 1, MOST_TEETH);
        return switch (kind) {
            case "end-mill" -> {
                Length reach = row.length("reach");
                yield row.build(() -> new MillCutter.EndMill(name, diameter, teeth, reach));
            }
            case "slot-drill" -> {
                Length reach = row.length("reach");
                yield row.build(() -> new MillCutter.SlotDrill(name, diameter, teeth, reach));
            }
            case "face-mill" -> row.build(() -> new MillCutter.FaceMill(name, diameter, teeth));
            case "slitting-saw" -> {
                Length thickness = row.length("thickness");
                yield row.build(() -> new MillCutter.SlittingSaw(name, diameter, teeth, thickness));
            }
            default -> throw new IllegalStateException("no cutter is written as " + kind);
        };
    }
}
