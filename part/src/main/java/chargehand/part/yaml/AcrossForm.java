package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Unreadable;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.FlatDepth;
import chargehand.part.Made;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads one feature across the axis. */
final class AcrossForm {
    static final List<String> KINDS = List.of("hole", "keyway", "flat", "over-flat", "taper-pin", "slit");
    private static final List<String> KEYS = List.of(
            "hole",
            "keyway",
            "flat",
            "over-flat",
            "taper-pin",
            "slit",
            "name",
            "at",
            "through",
            "depth",
            "length",
            "with",
            "walls",
            "around",
            "made");

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
            case "taper-pin" -> taperPin();
            case "slit" -> slit();
            default -> flat(new FlatDepth.Leaving(Values.size(form, kind)));
        };
    }

    static String defaultName(Across across, int number) {
        return switch (across) {
            case Across.CrossHole hole -> holeName(number);
            case Across.Keyway keyway -> keywayName(number);
            case Across.Flat flat -> flatName(number);
            case Across.TaperPin pin -> pinName(number);
            case Across.Slit slit -> slitName(number);
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

    private static String pinName(int number) {
        return "taper-pin hole " + number;
    }

    private static String slitName(int number) {
        return "slit " + number;
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

    private Optional<Across> taperPin() {
        String name = form.findText("name").orElse(pinName(number));
        Size nominal = Values.size(form, "taper-pin");
        Size at = Values.size(form, "at");
        String with = form.findText("with").orElse("");
        Angle around = Values.around(form);
        Made made = Values.made(form);
        return form.build(() -> new Across.TaperPin(name, nominal, at, with, around, made));
    }

    private Optional<Across> slit() {
        String name = form.findText("name").orElse(slitName(number));
        Size width = Values.size(form, "slit");
        Size at = Values.size(form, "at");
        Size length = Values.size(form, "length");
        Across.Walls walls = form.value("walls", AcrossForm::walls, Across.Walls.ONE);
        Angle around = Values.around(form);
        Made made = Values.made(form);
        return form.build(() -> new Across.Slit(name, width, at, length, walls, around, made));
    }

    private static Across.Walls walls(String text) {
        return Arrays.stream(Across.Walls.values())
                .filter(walls -> walls.text().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new Unreadable("A slit goes through one wall of a hollow part, or both."));
    }
}
