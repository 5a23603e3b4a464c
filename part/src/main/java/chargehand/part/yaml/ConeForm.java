package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.part.Tolerance;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.Optional;

/**
 * Reads an outside cone: two diameters, or the larger one and a taper on diameter or an included angle. The diameter that
 * is left out is worked out, bracketed, and lies at the small end.
 */
final class ConeForm {
    private final Form section;
    private final Stretch stretch;

    ConeForm(Form section, Stretch stretch) {
        this.section = section;
        this.stretch = stretch;
    }

    Optional<Section> read() {
        Optional<Section> cone = section.form("cone").flatMap(this::cone);
        return section.build(() -> cone).flatMap(made -> made);
    }

    private Optional<Section> cone(Form form) {
        boolean tapered = form.has("taper");
        boolean sloped = form.has("angle") || tapered;
        if (!sloped) {
            Size from = Values.size(form, "from");
            Size to = Values.size(form, "to");
            return form.build(() -> new Section.Cone(stretch, from, to, ""));
        }
        Optional<Slope> slope = slope(form);
        boolean narrowing = form.has("from");
        if (narrowing == form.has("to")) {
            form.refuse(
                    narrowing ? ReadingFault.KEYS_CLASH : ReadingFault.KEY_MISSING,
                    "A cone with a taper or an angle is given one diameter, the larger: from or to.");
        }
        Size large = large(form, narrowing ? "from" : "to");
        Optional<Size> small = form.isSound() ? slope.flatMap(read -> small(form, large, read)) : Optional.empty();
        return form.build(() -> narrowing
                ? new Section.Cone(
                        stretch, large, small.orElseThrow(), slope.orElseThrow().text())
                : new Section.Cone(
                        stretch, small.orElseThrow(), large, slope.orElseThrow().text()));
    }

    private static Size large(Form form, String key) {
        Size size = Values.findSize(form, key).orElse(Values.STAND_IN);
        if (size.tolerance() instanceof Tolerance.Bracketed) {
            form.refuse(
                    key, ReadingFault.UNREADABLE, "The larger diameter of a taper is measured: take its brackets off.");
        }
        return size;
    }

    /** The smaller diameter, worked out. */
    private Optional<Size> small(Form form, Size large, Slope slope) {
        double fall = slope.onDiameter() * stretch.length().length().mm();
        double left = large.length().mm() - fall;
        if (!(left > 0)) {
            form.refuse(
                    slope.key(),
                    ReadingFault.UNREADABLE,
                    "Over this length the cone would run past its point: make it shorter, slimmer or thicker.");
            return Optional.empty();
        }
        LengthUnit unit = large.nominal().unit();
        Length small = Length.mm(left);
        return Optional.of(
                new Size(new Written(LengthText.exact(small, unit), small, unit), new Tolerance.Bracketed()));
    }

    private Optional<Slope> slope(Form form) {
        Optional<Slope> taper = form.find("taper", text -> taper(text, form.bareUnit()));
        Optional<Slope> angle = form.find("angle", text -> angle(text, form.bareUnit()));
        if (taper.isPresent() && angle.isPresent()) {
            form.refuse("angle", ReadingFault.KEYS_CLASH, "A cone has a taper or an angle, not both.");
        }
        return taper.or(() -> angle);
    }

    private static Slope taper(String text, LengthUnit unit) {
        double taper = Notations.TAPER.read(text, unit).value();
        if (!(taper > 0 && taper < MOST_TAPER)) {
            throw new Unreadable("A taper here lies above nothing and below 10 in 1, as in 1 in 12.");
        }
        return new Slope("taper", text, taper);
    }

    private static Slope angle(String text, LengthUnit unit) {
        Angle angle = Notations.ANGLE.read(text, unit);
        if (!(angle.degrees() > 0 && angle.degrees() < 170)) {
            throw new Unreadable("An included angle here lies between 0° and 170°, as in 60°.");
        }
        return new Slope("angle", AngleFigures.exact(angle), 2 * angle.half().tan());
    }

    private static final double MOST_TAPER = 10;

    /**
     * How a cone slopes.
     *
     * @param key the key it was written under
     * @param text a taper as written, an angle in degrees with their sign
     * @param onDiameter how much the diameter changes over a unit of length
     */
    private record Slope(String key, String text, double onDiameter) {}
}
