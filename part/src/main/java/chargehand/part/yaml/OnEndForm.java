package chargehand.part.yaml;

import chargehand.measure.Unreadable;
import chargehand.part.CentreHole;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.HoleCircle;
import chargehand.part.Made;
import chargehand.part.OnEnd;
import chargehand.part.Size;
import chargehand.part.Stays;
import chargehand.part.yaml.tree.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads one thing made into a face of a turned part. */
final class OnEndForm {
    static final List<String> KINDS = List.of("holes", "tapped-holes", "slot", "centre");
    private static final List<String> KEYS = List.of(
            "holes",
            "tapped-holes",
            "slot",
            "centre",
            "name",
            "end",
            "count",
            "circle",
            "depth",
            "through",
            "stays",
            "around",
            "fit",
            "made");

    private final Form form;
    private final String name;
    private final End end;
    private final Made made;

    private OnEndForm(Form form, String kind, int number) {
        this.form = form;
        this.name = form.findText("name").orElse(defaultName(kind, number));
        this.end = form.value("end", Values::end, End.A);
        this.made = Values.made(form);
    }

    static Optional<OnEnd> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new OnEndForm(form, kind, number).read(kind));
    }

    static String defaultName(OnEnd feature, int number) {
        return defaultName(
                switch (feature) {
                    case OnEnd.Drilled drilled -> "holes";
                    case OnEnd.Tapped tapped -> "tapped-holes";
                    case OnEnd.Slot slot -> "slot";
                    case OnEnd.Centre centre -> "centre";
                },
                number);
    }

    private static String defaultName(String kind, int number) {
        return switch (kind) {
            case "slot" -> "slot " + number;
            case "centre" -> "centre hole " + number;
            default -> "holes " + number;
        };
    }

    private Optional<OnEnd> read(String kind) {
        return switch (kind) {
            case "slot" -> slot();
            case "centre" -> centre();
            default -> holes(kind);
        };
    }

    private Optional<OnEnd> slot() {
        Size width = Values.size(form, "slot");
        Size depth = Values.size(form, "depth");
        var around = Values.around(form);
        return form.build(() -> new OnEnd.Slot(name, end, width, depth, around, made));
    }

    private Optional<OnEnd> centre() {
        CentreHole hole =
                form.value("centre", OnEndForm::centreHole, CentreHole.list().getFirst());
        Stays stays = form.value("stays", OnEndForm::stays, Stays.MAY);
        return form.build(() -> new OnEnd.Centre(name, end, hole, stays, made));
    }

    /** A centre hole by its form and its drill, with or without its mouth: {@code B 2.5/8} or {@code B 2.5}. */
    private static CentreHole centreHole(String text) {
        String plain = text.toUpperCase(Locale.ROOT)
                .replaceFirst("^ISO\\s*6411\\s*-?\\s*", "")
                .replaceAll("\\s+", "");
        return CentreHole.list().stream()
                .filter(hole -> {
                    String designation = hole.designation().replaceAll("\\s+", "");
                    return designation.equals(plain) || designation.startsWith(plain + "/");
                })
                .findFirst()
                .orElseThrow(
                        () -> new Unreadable("A centre hole is one of ISO 6411, form A, B or R, such as B 2.5/8."));
    }

    private static Stays stays(String text) {
        return Arrays.stream(Stays.values())
                .filter(stays -> stays.text().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() ->
                        new Unreadable("A centre hole must stay, may stay or must not: write must, may or must not."));
    }

    private Optional<OnEnd> holes(String kind) {
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
