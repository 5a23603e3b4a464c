package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one feature across the axis. */
final class AcrossForm {
    static final List<String> KINDS = List.of("hole", "keyway");
    private static final List<String> KEYS =
            List.of("hole", "keyway", "name", "at", "through", "depth", "length", "around");

    private AcrossForm() {}

    static Optional<Across> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> kind.equals("hole") ? hole(form, number) : keyway(form, number));
    }

    static String defaultName(Across across, int number) {
        return switch (across) {
            case Across.CrossHole hole -> holeName(number);
            case Across.Keyway keyway -> keywayName(number);
        };
    }

    private static String holeName(int number) {
        return "cross hole " + number;
    }

    private static String keywayName(int number) {
        return "keyway " + number;
    }

    private static Optional<Across> hole(Form form, int number) {
        String name = form.findText("name").orElse(holeName(number));
        Size diameter = Values.drill(form, "hole");
        Size at = Values.size(form, "at");
        Depth depth = Values.depthOrThrough(form);
        Angle around = Values.around(form);
        return form.build(() -> new Across.CrossHole(name, diameter, at, depth, around));
    }

    private static Optional<Across> keyway(Form form, int number) {
        String name = form.findText("name").orElse(keywayName(number));
        Size width = Values.size(form, "keyway");
        Size depth = Values.size(form, "depth");
        Size at = Values.size(form, "at");
        Size length = Values.size(form, "length");
        Angle around = Values.around(form);
        return form.build(() -> new Across.Keyway(name, width, depth, at, length, around));
    }
}
