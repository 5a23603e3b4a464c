package chargehand.part.yaml;

import chargehand.measure.Deviations;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.part.Across;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Drafting;
import chargehand.part.GeneralTolerance;
import chargehand.part.Hole;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Texture;
import chargehand.part.Tie;
import chargehand.part.check.FeatureCheck;
import chargehand.part.check.Findings;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the whole of a part file. */
final class PartForm {
    private static final Pattern ISO_2768 = Pattern.compile("(?i)ISO\\s*2768\\s*-\\s*([fmcv])");
    private static final Pattern RA = Pattern.compile("(?i)(?:Ra\\s*)?(\\d{1,4}(?:[.,]\\d{1,3})?)\\s*(?:[µμu]m)?");

    /** The keys of a turned part's shape. */
    private static final List<String> TURNED = List.of("outside", "inside", "across", "in-bores", "on-ends");

    private final Form form;
    private final GeneralTolerance general;
    private final FeatureCheck features;

    private PartForm(Form form, LengthUnit unit) {
        this.form = form;
        this.general = form.value("general", this::general, GeneralTolerance.Iso2768.MEDIUM);
        this.features = new FeatureCheck(unit, general);
    }

    /** Reads a part out of the form of a file; the unit of its bare numbers is one of its own keys. */
    static Draft read(Form file) {
        LengthUnit unit = file.value("unit", PartForm::unit, LengthUnit.MILLIMETRE);
        PartForm form = new PartForm(file.withBareUnit(unit), unit);
        Optional<Part> part = form.part(unit);
        return new Draft(part, form.features.findings());
    }

    /**
     * What could be read.
     *
     * @param part the part, if nothing was wrong with the file
     * @param features what was found about the features that could be read, each by itself
     */
    record Draft(Optional<Part> part, Findings features) {}

    private Optional<Part> part(LengthUnit unit) {
        form.know(List.of("unit"));
        String title = form.text("part");
        String drawing = form.findText("drawing").orElse("");
        Drafting drafting = DraftingForm.read(form);
        String issue = form.findText("issue").orElseGet(() -> DraftingForm.lastLetter(drafting));
        String material = form.text("material");
        String duty = form.findText("duty").orElse("");
        Optional<Texture> texture = form.find("texture", PartForm::texture);
        Optional<Body> body = body();
        List<Tie> ties = form.rows("ties", (tie, number) -> tie(tie));
        List<String> notes = form.texts("notes");
        return form.build(() -> new Part(
                title,
                drawing,
                issue,
                unit,
                material,
                duty,
                general,
                texture,
                body.orElseThrow(),
                ties,
                notes,
                drafting));
    }

    private static LengthUnit unit(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "in", "inch", "inches" -> LengthUnit.INCH;
            case "mm" -> LengthUnit.MILLIMETRE;
            default -> throw new Unreadable("The unit of bare numbers is in or mm.");
        };
    }

    private GeneralTolerance general(String text) {
        Matcher iso = ISO_2768.matcher(text);
        if (text.length() <= SizeText.LONGEST && iso.matches()) {
            return switch (iso.group(1).toLowerCase(Locale.ROOT)) {
                case "f" -> GeneralTolerance.Iso2768.FINE;
                case "m" -> GeneralTolerance.Iso2768.MEDIUM;
                case "c" -> GeneralTolerance.Iso2768.COARSE;
                default -> GeneralTolerance.Iso2768.VERY_COARSE;
            };
        }
        Deviations deviations = SizeText.deviations(text, form.bareUnit());
        Length either = deviations.upper();
        if (!deviations.lower().equals(either.negated())) {
            throw new Unreadable("A general tolerance is the same either way: write ±.005 or ISO 2768-m.");
        }
        return new GeneralTolerance.PlusMinus(either, text);
    }

    private static Texture texture(String text) {
        Matcher matcher = RA.matcher(text.length() <= SizeText.LONGEST ? text : "");
        if (!matcher.matches()) {
            throw new Unreadable("A texture is a mean roughness in micrometres: write Ra 3.2.");
        }
        double ra = Double.parseDouble(matcher.group(1).replace(',', '.'));
        if (!(ra > 0 && ra <= 1000)) {
            throw new Unreadable("A mean roughness lies above nothing and up to 1000 µm: write Ra 3.2.");
        }
        return new Texture(ra);
    }

    private Optional<Body> body() {
        boolean block = form.has("block");
        boolean turned = form.has("outside");
        if (block && TURNED.stream().anyMatch(form::has)) {
            form.refuse(
                    "block",
                    ReadingFault.KEYS_CLASH,
                    "A part is turned (" + String.join(", ", TURNED) + ") or a block, not both.");
        } else if (!block && !turned) {
            form.refuse(ReadingFault.KEY_MISSING, "The shape is missing: outside with its sections, or block.");
        } else if (turned && form.has("cuts")) {
            form.refuse("cuts", ReadingFault.KEYS_CLASH, "Cuts belong to a block: on a turned part write across.");
        } else if (turned && form.has("holes")) {
            form.refuse("holes", ReadingFault.KEYS_CLASH, "Holes belong to a block: on a turned part write across.");
        }
        Optional<Body> body = turned ? turned() : block ? block() : Optional.empty();
        form.know(TURNED);
        form.know(List.of("block", "holes", "cuts"));
        return body;
    }

    private Optional<Body> block() {
        List<Hole> holes = form.rows("holes", judged(BlockForm::hole, features::hole));
        List<BlockCut> cuts = form.rows("cuts", judged(BlockCutForm::read, features::cut));
        return BlockForm.read(form, holes, cuts);
    }

    /** Reads a feature and judges it by itself, so that its faults are told even when others cannot be read. */
    private static <T> BiFunction<Form, Integer, Optional<T>> judged(
            BiFunction<Form, Integer, Optional<T>> reader, BiConsumer<String, T> judge) {
        return (form, number) -> {
            Optional<T> feature = reader.apply(form, number);
            feature.ifPresent(read -> judge.accept(form.place().path(), read));
            return feature;
        };
    }

    private Optional<Body> turned() {
        List<Section> outside = form.rows("outside", judged(SectionForm::read, features::section));
        List<Bore> inside = form.rows("inside", judged(BoreForm::read, features::bore));
        List<Across> across = form.rows("across", judged(AcrossForm::read, features::across));
        List<InBore> inBores = form.rows("in-bores", judged(InBoreForm::read, features::inBore));
        List<OnEnd> onEnds = form.rows("on-ends", judged(OnEndForm::read, features::onEnd));
        if (outside.isEmpty() && form.isSound()) {
            form.refuse("outside", ReadingFault.NOTHING_WRITTEN, "The outside has at least one section.");
        }
        return form.isSound()
                ? Optional.of(new Body.Turned(outside, inside, across, inBores, onEnds))
                : Optional.empty();
    }

    private static Optional<Tie> tie(Form form) {
        var runOut = Values.length(form, "run-out");
        String of = form.text("of");
        String to = form.text("to");
        return form.build(() -> new Tie(of, to, runOut));
    }
}
