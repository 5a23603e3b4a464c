package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.Made;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.List;
import java.util.Optional;

/** Reads one bore. */
final class BoreForm {
    static final List<String> KINDS = List.of("drill", "bore", "ream", "counterbore", "tap", "cone");
    private static final List<String> KEYS = List.of(
            "drill",
            "bore",
            "ream",
            "counterbore",
            "tap",
            "cone",
            "name",
            "from",
            "depth",
            "through",
            "mouth",
            "to",
            "fit",
            "made");
    private static final double FLATTEST_CONE = 170;
    private static final double BEYOND_ANY_PART_MM = 100_000;

    private final Form form;
    private final String name;
    private final Made made;

    private BoreForm(Form form, int number) {
        this.form = form;
        this.name = form.findText("name").orElse(defaultName(number));
        this.made = Values.made(form);
    }

    static Optional<Bore> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new BoreForm(form, number).read(kind));
    }

    static String defaultName(int number) {
        return "bore " + number;
    }

    private Optional<Bore> read(String kind) {
        return switch (kind) {
            case "tap" -> tapped();
            case "cone" -> coned();
            case "counterbore" -> counterbored();
            default -> plain(kind);
        };
    }

    private Optional<Bore> plain(String kind) {
        boolean drilled = kind.equals("drill");
        Size diameter = drilled ? Values.drill(form, kind) : Values.size(form, kind);
        Depth depth = Values.depthOrThrough(form);
        End from = from(depth);
        if (drilled) {
            return form.build(() -> new Bore.Drilled(name, from, depth, diameter, made));
        }
        var mouth = Values.edge(form, "mouth");
        return kind.equals("bore")
                ? form.build(() -> new Bore.Bored(name, from, depth, diameter, mouth, made))
                : form.build(() -> new Bore.Reamed(name, from, depth, diameter, mouth, made));
    }

    private Optional<Bore> counterbored() {
        Size diameter = Values.size(form, "counterbore");
        Depth depth = new Depth.Blind(Values.size(form, "depth"));
        End from = from(depth);
        var mouth = Values.edge(form, "mouth");
        return form.build(() -> new Bore.Counterbored(name, from, depth, diameter, mouth, made));
    }

    private Optional<Bore> tapped() {
        var thread = Values.thread(form, "tap");
        Depth depth = Values.depthOrThrough(form);
        End from = from(depth);
        String fit = form.findText("fit").orElse("");
        return form.build(() -> new Bore.Tapped(name, from, depth, thread, fit, made));
    }

    private Optional<Bore> coned() {
        Angle angle = form.value("cone", this::included, Angle.degrees(90));
        Size mouth = Values.size(form, "mouth");
        Size to = Values.size(form, "to");
        End from = form.value("from", Values::end, End.A);
        return form.build(() -> new Bore.Coned(name, from, depth(mouth, to, angle), mouth, angle, to, made));
    }

    private Angle included(String text) {
        Angle angle = Notations.ANGLE.read(text, form.bareUnit());
        if (!(angle.degrees() > 0 && angle.degrees() <= FLATTEST_CONE)) {
            throw new Unreadable("The included angle of a cone lies above 0° and up to 170°, as in 90°.");
        }
        return angle;
    }

    /** How deep a cone goes: it follows from its two diameters and its angle. */
    private static Depth depth(Size mouth, Size to, Angle angle) {
        LengthUnit unit = mouth.nominal().unit();
        double fall = mouth.length().minus(to.length()).half().mm();
        Length depth = Length.mm(Math.clamp(fall / angle.half().tan(), -BEYOND_ANY_PART_MM, BEYOND_ANY_PART_MM));
        return new Depth.Blind(
                new Size(new Written(LengthText.exact(depth, unit), depth, unit), new Tolerance.Bracketed()));
    }

    private End from(Depth depth) {
        return switch (depth) {
            case Depth.Through() -> form.find("from", Values::end).orElse(End.A);
            case Depth.Blind blind -> blindFrom();
        };
    }

    private End blindFrom() {
        if (!form.has("from")) {
            form.refuse(ReadingFault.KEY_MISSING, "'from' is missing here: a bore with a depth begins at end A or B.");
        }
        return form.find("from", Values::end).orElse(End.A);
    }
}
