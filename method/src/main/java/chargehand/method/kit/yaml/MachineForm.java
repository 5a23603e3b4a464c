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
        KitForm form = inUnit(whole);
        String name = form.nameOf(kind);
        return switch (kind) {
            case "lathe" -> LatheForm.read(form, name).map(Machine.class::cast);
            case "mill" -> MillForm.read(form, name).map(Machine.class::cast);
            case "radial-drill" -> radialDrill(form, name).map(Machine.class::cast);
            case "saw" -> saw(form, name).map(Machine.class::cast);
            case "bench" -> bench(form, name).map(Machine.class::cast);
            default -> throw new IllegalStateException("no machine is written as " + kind);
        };
    }

    /** The same keys with bare numbers in the unit that the file names. */
    static KitForm inUnit(Form whole) {
        LengthUnit unit = whole.value("unit", KitText::unit, LengthUnit.MILLIMETRE);
        Form inUnit = whole.withBareUnit(unit);
        inUnit.know(List.of("unit"));
        return new KitForm(inUnit);
    }

    static List<Vice> vices(KitForm form) {
        return form.rows("vices", vice -> {
            String name = vice.name();
            Length width = vice.length("width");
            Length opening = vice.length("opening");
            Length jawHeight = vice.length("jaw-height");
            return vice.build(() -> new Vice(name, width, opening, jawHeight));
        });
    }

    private static Optional<RadialDrill> radialDrill(KitForm form, String name) {
        var capacity = form.length("capacity");
        var speeds = form.speeds();
        var power = form.power();
        var feeds = form.feeds("feeds");
        var reach = form.group("reach", MachineForm::reach);
        var vices = vices(form);
        var vees = form.findSpan("vees");
        var clamps = form.findLength("clamps");
        return form.build(() -> new RadialDrill(
                name, form.unit(), capacity, speeds, power, feeds, reach.orElseThrow(), vices, vees, clamps));
    }

    private static Optional<RadialDrill.Reach> reach(KitForm form) {
        var fromColumn = form.length("from-column");
        var underSpindle = form.length("under-spindle");
        var quill = form.length("quill");
        return form.build(() -> new RadialDrill.Reach(fromColumn, underSpindle, quill));
    }

    private static Optional<Saw> saw(KitForm form, String name) {
        var largest = form.length("largest");
        var kerf = form.length("kerf");
        var shortest = form.lengthOrNone("shortest-held");
        var square = form.lengthOrNone("out-of-square");
        return form.build(() -> new Saw(name, form.unit(), largest, kerf, shortest, square));
    }

    private static Optional<Bench> bench(KitForm form, String name) {
        var vices = vices(form);
        return form.build(() -> new Bench(name, form.unit(), vices));
    }
}
