package chargehand.part.yaml;

import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.HoleCircle;
import chargehand.part.Made;
import chargehand.part.OnEnd;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one thing made into a face of a turned part. */
final class OnEndForm {
    static final List<String> KINDS = List.of("holes", "tapped-holes");
    private static final List<String> KEYS = List.of(
            "holes", "tapped-holes", "name", "end", "count", "circle", "depth", "through", "around", "fit", "made");

    private final Form form;
    private final String name;
    private final End end;
    private final Made made;

    private OnEndForm(Form form, int number) {
        this.form = form;
        this.name = form.findText("name").orElse(defaultName(number));
        this.end = form.value("end", Values::end, End.A);
        this.made = Values.made(form);
    }

    static Optional<OnEnd> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new OnEndForm(form, number).read(kind));
    }

    static String defaultName(int number) {
        return "holes " + number;
    }

    private Optional<OnEnd> read(String kind) {
        HoleCircle circle = circle();
        Depth depth = Values.depthOrThrough(form);
        if (kind.equals("holes")) {
            Size diameter = Values.drill(form, kind);
            return form.build(() -> new OnEnd.Drilled(name, end, circle, depth, diameter, made));
        }
        var thread = Values.thread(form, kind);
        String fit = form.findText("fit").orElse("");
        return form.build(() -> new OnEnd.Tapped(name, end, circle, depth, thread, fit, made));
    }

    private HoleCircle circle() {
        int count = form.value("count", Values::count, 1);
        Size diameter = Values.size(form, "circle");
        return new HoleCircle(count, diameter, Values.around(form));
    }
}
