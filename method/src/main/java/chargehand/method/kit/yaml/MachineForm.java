package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Bench;
import chargehand.method.kit.Machine;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Vice;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one machine's file. */
final class MachineForm {
    /** The kinds of machines that can be described. */
    static final List<String> KINDS = List.of("lathe", "mill", "radial-drill", "saw", "bench");

    private MachineForm() {}

    static Optional<Machine> read(Form whole, String kind) {
        Sheet sheet = inUnit(whole);
        String name = sheet.nameOf(kind);
        return switch (kind) {
            case "lathe" -> LatheForm.read(sheet, name).map(Machine.class::cast);
            case "mill" -> MillForm.read(sheet, name).map(Machine.class::cast);
            case "radial-drill" -> radialDrill(sheet, name).map(Machine.class::cast);
            case "saw" -> saw(sheet, name).map(Machine.class::cast);
            case "bench" -> bench(sheet, name).map(Machine.class::cast);
            default -> throw new IllegalStateException("no machine is written as " + kind);
        };
    }

    /** The same keys with bare numbers in the unit that the file names. */
    static Sheet inUnit(Form whole) {
        LengthUnit unit = whole.value("unit", KitText::unit, LengthUnit.MILLIMETRE);
        Form inUnit = whole.withBareUnit(unit);
        inUnit.know(List.of("unit"));
        return new Sheet(inUnit);
    }

    static List<Vice> vices(Sheet sheet) {
        return sheet.rows("vices", vice -> {
            String name = vice.name();
            Length width = vice.length("width");
            Length opening = vice.length("opening");
            Length jawHeight = vice.length("jaw-height");
            return vice.build(() -> new Vice(name, width, opening, jawHeight));
        });
    }

    private static Optional<RadialDrill> radialDrill(Sheet sheet, String name) {
        var capacity = sheet.length("capacity");
        var speeds = sheet.speeds();
        var power = sheet.power();
        var feeds = sheet.feeds("feeds");
        var reach = sheet.group("reach", MachineForm::reach);
        var vices = vices(sheet);
        var vees = sheet.findSpan("vees");
        return sheet.build(() ->
                new RadialDrill(name, sheet.unit(), capacity, speeds, power, feeds, reach.orElseThrow(), vices, vees));
    }

    private static Optional<RadialDrill.Reach> reach(Sheet sheet) {
        var fromColumn = sheet.length("from-column");
        var underSpindle = sheet.length("under-spindle");
        var quill = sheet.length("quill");
        return sheet.build(() -> new RadialDrill.Reach(fromColumn, underSpindle, quill));
    }

    private static Optional<Saw> saw(Sheet sheet, String name) {
        var largest = sheet.length("largest");
        var kerf = sheet.length("kerf");
        var shortest = sheet.lengthOrNone("shortest-held");
        var square = sheet.lengthOrNone("out-of-square");
        return sheet.build(() -> new Saw(name, sheet.unit(), largest, kerf, shortest, square));
    }

    private static Optional<Bench> bench(Sheet sheet, String name) {
        var vices = vices(sheet);
        return sheet.build(() -> new Bench(name, sheet.unit(), vices));
    }
}
