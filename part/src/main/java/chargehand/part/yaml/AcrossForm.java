package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.FlatDepth;
import chargehand.part.Made;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one feature across the axis. */
final class AcrossForm {
    static final List<String> KINDS = List.of("hole", "keyway", "flat", "over-flat");
    private static final List<String> KEYS = List.of(
            "hole", "keyway", "flat", "over-flat", "name", "at", "through", "depth", "length", "around", "made");

    private final Form form;
    private final int number;

    private AcrossForm(Form form, int number) {
        this.form = form;
        this.number = number;
    }

    static Optional<Across> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new AcrossForm(form, number).read(kind));
    }

    private Optional<Across> read(String kind) {
        return switch (kind) {
            case "hole" -> hole();
            case "keyway" -> keyway();
            case "flat" -> flat(new FlatDepth.Below(Values.size(form, kind)));
            default -> flat(new FlatDepth.Leaving(Values.size(form, kind)));
        };
    }

    static String defaultName(Across across, int number) {
        return switch (across) {
            case Across.CrossHole hole -> holeName(number);
            case Across.Keyway keyway -> keywayName(number);
            case Across.Flat flat -> flatName(number);
        };
    }

    private static String holeName(int number) {
        return "cross hole " + number;
    }

    private static String keywayName(int number) {
        return "keyway " + number;
    }

    private static String flatName(int number) {
        return "flat " + number;
    }

    private Optional<Across> hole() {
        String name = form.findText("name").orElse(holeName(number));
        Size diameter = Values.drill(form, "hole");
        Size at = Values.size(form, "at");
        Depth depth = Values.depthOrThrough(form);
        Angle around = Values.around(form);
        Made made = Values.made(form);
        return form.build(() -> new Across.CrossHole(name, diameter, at, depth, around, made));
    }

    private Optional<Across> keyway() {
        String name = form.findText("name").orElse(keywayName(number));
        Size width = Values.size(form, "keyway");
        Size depth = Values.size(form, "depth");
        Size at = Values.size(form, "at");
        Size length = Values.size(form, "length");
        Angle around = Values.around(form);
        Made made = Values.made(form);
        return form.build(() -> new Across.Keyway(name, width, depth, at, length, around, made));
    }

    private Optional<Across> flat(FlatDepth depth) {
        String name = form.findText("name").orElse(flatName(number));
        Size at = Values.size(form, "at");
        Size length = Values.size(form, "length");
        Angle around = Values.around(form);
        Made made = Values.made(form);
        return form.build(() -> new Across.Flat(name, depth, at, length, around, made));
    }
}
