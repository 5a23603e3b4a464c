package chargehand.method.kit.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.kit.MillCutter;
import chargehand.part.ToothSize;
import java.util.List;
import java.util.Optional;

/** Reads one cutter of a mill. */
final class MillCutterForm {
    /** The kinds of cutters that can be described. */
    static final List<String> KINDS = List.of("end-mill", "slot-drill", "face-mill", "slitting-saw", "gear-cutter");

    private static final List<String> KEYS =
            List.of("diameter", "teeth", "reach", "thickness", "module", "diametral-pitch", "pressure-angle", "number");

    private static final int MOST_TEETH = 300;
    private static final int MOST_NUMBER = 8;

    private MillCutterForm() {}

    static Optional<MillCutter> read(KitForm row) {
        String kind = row.kind(KINDS, KEYS);
        return kind.isEmpty() ? Optional.empty() : cutter(row, kind);
    }

    /** The module, or what a diametral pitch comes to. */
    private static double module(KitForm row) {
        return row.findRatio("diametral-pitch")
                .map(perInch -> ToothSize.INCH / perInch.doubleValue())
                .orElseGet(() -> row.ratio("module").doubleValue());
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
            case "gear-cutter" -> {
                double module = module(row);
                Angle angle = row.angle("pressure-angle");
                int number = row.count("number", 1, MOST_NUMBER);
                yield row.build(() -> new MillCutter.GearCutter(name, diameter, teeth, module, angle, number));
            }
            default -> throw new IllegalStateException("no cutter is written as " + kind);
        };
    }
}
