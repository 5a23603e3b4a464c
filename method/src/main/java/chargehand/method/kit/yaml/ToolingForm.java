package chargehand.method.kit.yaml;

import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Tooling;
import chargehand.method.kit.Tooling.Die;
import chargehand.method.kit.Tooling.DieKind;
import chargehand.part.yaml.tree.Form;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads a file of tooling, and joins several. */
final class ToolingForm {
    private ToolingForm() {}

    static Optional<Tooling> read(Form whole) {
        KitForm form = MachineForm.inUnit(whole);
        form.nameOf("tooling");
        var latheTools = form.rows("lathe-tools", LatheToolForm::read);
        var holeTools = HoleToolForm.read(form);
        var dies = dies(form);
        var holder = form.findLength("tailstock-die-holder");
        var cutters = form.rows("milling-cutters", MillCutterForm::read);
        var mandrels = form.rows("mandrels", ToolingForm::mandrel);
        var gauges = form.rows("gauges", GaugeForm::read);
        var deburring = form.keys().texts("deburring");
        return form.build(() -> new Tooling(latheTools, holeTools, dies, holder, cutters, mandrels, gauges, deburring));
    }

    private static List<Die> dies(KitForm form) {
        return Stream.concat(
                        form.keys().values("dies", text -> new Die(KitText.thread(text), DieKind.SPLIT)).stream(),
                        form.keys().values("solid-dies", text -> new Die(KitText.thread(text), DieKind.SOLID)).stream())
                .toList();
    }

    private static Optional<Tooling.Mandrel> mandrel(KitForm row) {
        String name = row.name();
        var kind = row.word("kind", Tooling.MandrelKind.TAPER);
        var bore = row.span("bore");
        var length = row.length("length");
        var runOut = row.lengthOrNone("run-out");
        return row.build(() -> new Tooling.Mandrel(name, kind, bore, length, runOut));
    }

    /** Everything that the files list, taken together; the largest die holder counts. */
    static Tooling joined(List<Tooling> files) {
        return new Tooling(
                all(files, Tooling::latheTools),
                new HoleTools(
                        all(files, each -> each.holeTools().drills()),
                        all(files, each -> each.holeTools().centreDrills()),
                        all(files, each -> each.holeTools().reamers()),
                        all(files, each -> each.holeTools().taps()),
                        all(files, each -> each.holeTools().countersinks())),
                all(files, Tooling::dies),
                files.stream()
                        .flatMap(each -> each.tailstockDieHolder().stream())
                        .max(Comparator.naturalOrder()),
                all(files, Tooling::millCutters),
                all(files, Tooling::mandrels),
                all(files, Tooling::gauges),
                all(files, Tooling::deburring));
    }

    private static <T> List<T> all(List<Tooling> files, Function<Tooling, List<T>> list) {
        return files.stream().flatMap(each -> list.apply(each).stream()).toList();
    }
}
