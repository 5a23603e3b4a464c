package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Ratio;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.part.Tolerance;
import chargehand.part.ToothSize;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.Optional;

/**
 * Reads the teeth of a spur wheel: how many, diametral pitch or module, and the pressure angle, which is never guessed: old
 * inch wheels are mostly 14½°, later ones 20°. The outside may be left out and then follows from the others, bracketed.
 */
final class TeethForm {
    private static final double LEAST_MODULE = 0.05;
    private static final double MOST_MODULE = 100;
    private static final ToothSize STAND_IN = new ToothSize.Module("1", 1);

    private final Form form;
    private final Stretch stretch;

    TeethForm(Form form, Stretch stretch) {
        this.form = form;
        this.stretch = stretch;
    }

    Optional<Section> read() {
        int teeth = form.value("teeth", Values::count, 30);
        ToothSize size = size();
        Angle pressure = form.value("pressure-angle", this::pressureAngle, Angle.degrees(20));
        Optional<Size> outside = Values.findSize(form, "outside");
        return form.build(
                () -> new Section.Toothed(stretch, teeth, size, pressure, outside.orElseGet(() -> full(teeth, size))));
    }

    private ToothSize size() {
        Optional<ToothSize> diametral = form.find("diametral-pitch", this::diametralPitch);
        Optional<ToothSize> module = form.find("module", this::module);
        boolean both = form.has("diametral-pitch") && form.has("module");
        if (both) {
            form.refuse("module", ReadingFault.KEYS_CLASH, "Teeth have a diametral pitch or a module, not both.");
        } else if (!form.has("diametral-pitch") && !form.has("module")) {
            form.refuse(ReadingFault.KEY_MISSING, "'diametral-pitch' or 'module' is missing here.");
        }
        return diametral.or(() -> module).orElse(STAND_IN);
    }

    private ToothSize diametralPitch(String text) {
        double perInch = number(text);
        return inRange(new ToothSize.DiametralPitch(text, perInch));
    }

    private ToothSize module(String text) {
        return inRange(new ToothSize.Module(text, number(text)));
    }

    private double number(String text) {
        Ratio number = Notations.NUMBER.read(text, form.bareUnit());
        if (!(number.value() > 0)) {
            throw new Unreadable("Teeth have a size of more than nothing: write 10 or 2.5.");
        }
        return number.value();
    }

    private static ToothSize inRange(ToothSize size) {
        if (!(size.module() >= LEAST_MODULE && size.module() <= MOST_MODULE)) {
            throw new Unreadable("Wheels are cut from module 0.05 to 100, or diametral pitch 1/4 to 500.");
        }
        return size;
    }

    private Angle pressureAngle(String text) {
        return Notations.ANGLE.read(text, form.bareUnit());
    }

    /** The outside that follows from teeth and size, in the unit they belong to. */
    static Size full(int teeth, ToothSize size) {
        Length outside = Section.Toothed.fullOutside(teeth, size);
        LengthUnit unit = switch (size) {
            case ToothSize.DiametralPitch pitch -> LengthUnit.INCH;
            case ToothSize.Module module -> LengthUnit.MILLIMETRE;
        };
        return new Size(new Written(LengthText.exact(outside, unit), outside, unit), new Tolerance.Bracketed());
    }
}
