package chargehand.part.yaml;

import chargehand.part.InBore;
import chargehand.part.Made;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one thing cut into the wall of a bore. */
final class InBoreForm {
    static final List<String> KINDS = List.of("keyway", "oil-groove", "recess");
    private static final List<String> KEYS =
            List.of("keyway", "oil-groove", "recess", "name", "in", "depth", "at", "length", "width", "around", "made");

    private final Form form;
    private final String name;
    private final String bore;
    private final Made made;

    private InBoreForm(Form form, String defaultName) {
        this.form = form;
        this.name = form.findText("name").orElse(defaultName);
        this.bore = form.text("in");
        this.made = Values.made(form);
    }

    static Optional<InBore> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new InBoreForm(form, defaultName(kind, number)).read(kind));
    }

    static String defaultName(InBore feature, int number) {
        return defaultName(
                switch (feature) {
                    case InBore.Keyway keyway -> "keyway";
                    case InBore.OilGroove groove -> "oil-groove";
                    case InBore.Recess recess -> "recess";
                },
                number);
    }

    private static String defaultName(String kind, int number) {
        return kind.replace('-', ' ') + " in bore " + number;
    }

    private Optional<InBore> read(String kind) {
        return switch (kind) {
            case "keyway" -> keyway();
            case "oil-groove" -> oilGroove();
            default -> recess();
        };
    }

    private Optional<InBore> keyway() {
        Size width = Values.size(form, "keyway");
        Size depth = Values.size(form, "depth");
        var around = Values.around(form);
        return form.build(() -> new InBore.Keyway(name, bore, width, depth, around, made));
    }

    private Optional<InBore> oilGroove() {
        Size width = Values.size(form, "oil-groove");
        Size depth = Values.size(form, "depth");
        InBore.Run run = run();
        var around = Values.around(form);
        return form.build(() -> new InBore.OilGroove(name, bore, width, depth, run, around, made));
    }

    /** Where neither place nor length is written, the whole bore is meant. */
    private InBore.Run run() {
        return form.has("at") || form.has("length")
                ? new InBore.Run.Part(Values.size(form, "at"), Values.size(form, "length"))
                : new InBore.Run.Open();
    }

    private Optional<InBore> recess() {
        Size diameter = Values.size(form, "recess");
        Size from = Values.size(form, "at");
        Size width = Values.size(form, "width");
        return form.build(() -> new InBore.Recess(name, bore, from, width, diameter, made));
    }
}
