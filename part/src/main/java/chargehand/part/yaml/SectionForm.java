package chargehand.part.yaml;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.part.Bulge;
import chargehand.part.Knurl;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.part.yaml.tree.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads one outside section. */
final class SectionForm {
    static final List<String> KINDS =
            List.of("round", "cone", "thread", "groove", "hexagon", "square", "flats", "teeth", "knurl", "curve");
    private static final List<String> KEYS = List.of(
            "round",
            "cone",
            "thread",
            "groove",
            "hexagon",
            "square",
            "flats",
            "teeth",
            "knurl",
            "curve",
            "name",
            "length",
            "at-a",
            "at-b",
            "made",
            "was",
            "fit",
            "corners",
            "diametral-pitch",
            "module",
            "pressure-angle",
            "outside",
            "pattern",
            "pitch",
            "from",
            "to",
            "form");

    private final Form form;
    private final int number;

    private SectionForm(Form form, int number) {
        this.form = form;
        this.number = number;
    }

    static Optional<Section> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> new SectionForm(form, number).read(kind));
    }

    private Optional<Section> read(String kind) {
        Stretch stretch = stretch();
        return switch (kind) {
            case "round" -> {
                Size diameter = Values.size(form, kind);
                yield form.build(() -> new Section.Round(stretch, diameter));
            }
            case "groove" -> {
                Size bottom = Values.size(form, kind);
                yield form.build(() -> new Section.Groove(stretch, bottom));
            }
            case "thread" -> {
                var thread = Values.thread(form, kind);
                String fit = form.findText("fit").orElse("");
                yield form.build(() -> new Section.Threaded(stretch, thread, fit));
            }
            case "cone" -> new ConeForm(form, stretch).read();
            case "hexagon" -> polygon(stretch, 6, kind);
            case "square" -> polygon(stretch, 4, kind);
            case "flats" -> flats(stretch);
            case "teeth" -> new TeethForm(form, stretch).read();
            case "knurl" -> knurled(stretch);
            case "curve" -> curved(stretch);
            default -> throw new IllegalStateException("no section is written as " + kind);
        };
    }

    private Stretch stretch() {
        String name = form.findText("name").orElse(defaultName(number));
        Size length = Values.size(form, "length");
        var atA = Values.edge(form, "at-a");
        var atB = Values.edge(form, "at-b");
        return new Stretch(name, length, atA, atB, Values.made(form), Values.findSize(form, "was"));
    }

    static String defaultName(int number) {
        return "section " + number;
    }

    private Optional<Section> polygon(Stretch stretch, int sides, String kind) {
        Size across = Values.size(form, kind);
        Length corners = corners(form, sides, across);
        return form.build(() -> new Section.Polygon(stretch, sides, across, corners));
    }

    private Optional<Section> flats(Stretch stretch) {
        Optional<Section> section = form.form("flats").flatMap(flats -> {
            int sides = flats.value("sides", Values::count, 6);
            Size across = Values.size(flats, "across");
            Length corners = corners(flats, sides, across);
            return flats.build(() -> new Section.Polygon(stretch, sides, across, corners));
        });
        return form.build(() -> section).flatMap(made -> made);
    }

    private Optional<Section> knurled(Stretch stretch) {
        Size diameter = Values.size(form, "knurl");
        Knurl pattern = form.value("pattern", SectionForm::pattern, Knurl.STRAIGHT);
        var pitch = Values.length(form, "pitch");
        return form.build(() -> new Section.Knurled(stretch, diameter, pattern, pitch));
    }

    private Optional<Section> curved(Stretch stretch) {
        var radius = Values.length(form, "curve");
        Size from = Values.size(form, "from");
        Size to = Values.size(form, "to");
        Bulge bulge = form.value("form", SectionForm::bulge, Bulge.CONVEX);
        return form.build(() -> new Section.Curved(stretch, from, to, radius, bulge));
    }

    private static Bulge bulge(String text) {
        return Arrays.stream(Bulge.values())
                .filter(bulge -> bulge.text().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new Unreadable("A curve is convex, swelling outward, or concave."));
    }

    private static Knurl pattern(String text) {
        return Arrays.stream(Knurl.values())
                .filter(knurl -> knurl.text().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new Unreadable("A knurl is straight or diamond."));
    }

    private static Length corners(Form form, int sides, Size across) {
        return Values.findLength(form, "corners").orElseGet(() -> sharp(sides, across.length()));
    }

    private static Length sharp(int sides, Length across) {
        return sides < 3 ? across : Section.Polygon.sharpCorners(sides, across);
    }
}
