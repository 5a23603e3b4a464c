package chargehand.drawing.dimension;

import chargehand.drawing.sign.Wording;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.LimitsText;
import chargehand.measure.Written;
import chargehand.part.GeneralTolerance;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes sizes as a drawing does: the figures as they were written, the unit left out where it is the drawing's own, a
 * tolerance after them.
 *
 * @param unit the unit of the drawing
 */
public record SizeText(LengthUnit unit) {
    private static final Pattern OWN_INCH = Pattern.compile("\\s*(in|ins|inch|inches|\"|″|'')\\.?$");
    private static final Pattern OWN_MM = Pattern.compile("\\s*(mm|millimetres?)$");
    private static final Pattern WHOLE_DASH_FRACTION = Pattern.compile("^(\\d+)-(\\d+/\\d+)$");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("^(\\d*),(\\d+)$");
    private static final Pattern PRINTABLE = Pattern.compile("[\\x20-\\x7e]+");

    private static final char MINUS = '\u2212';

    /** Decimals of a limit: a micrometre, a tenth of a thou. */
    private int decimals() {
        return switch (unit) {
            case MILLIMETRE -> LengthText.MICROMETRE;
            case INCH -> LengthText.TENTH_OF_A_THOU;
        };
    }

    /** The figures of a size as written, without the drawing's own unit. */
    public String figures(Written written) {
        Pattern own = unit == LengthUnit.INCH ? OWN_INCH : OWN_MM;
        String text = written.unit() == unit ? own.matcher(written.text()).replaceFirst("") : written.text();
        if (!PRINTABLE.matcher(text).matches()) {
            return figures(written.length());
        }
        Matcher dash = WHOLE_DASH_FRACTION.matcher(text);
        return DECIMAL_COMMA.matcher(dash.replaceFirst("$1 $2")).replaceFirst("$1.$2");
    }

    /** The figures of a length that nobody wrote: a fraction of an inch where it is one, else decimals. */
    public String figures(Length length) {
        if (unit == LengthUnit.INCH) {
            return LengthText.fraction(length)
                    .map(text -> OWN_INCH.matcher(text).replaceFirst(""))
                    .orElseGet(() -> LengthText.figures(length, unit));
        }
        return LengthText.figures(length, unit);
    }

    public Wording length(Length length) {
        return Wording.size(figures(length));
    }

    /** A length that nobody wrote, with what a size that it hangs on may be off. */
    public Wording length(Length length, Tolerance tolerance) {
        return switch (tolerance) {
            case Tolerance.General() -> length(length);
            case Tolerance.Bracketed() -> length(length);
            case Tolerance.Letters(var code, var lower, var upper) ->
                length(length, new Tolerance.Deviations(lower, upper));
            case Tolerance.Deviations deviations ->
                toleranced(figures(length), new Size(Written.of(length, unit), deviations));
        };
    }

    public Wording size(Size size) {
        return toleranced(figures(size.nominal()), size);
    }

    /** A size with its limits in plain words, for a note. */
    public String words(Size size) {
        String figures = figures(size.nominal());
        return switch (size.tolerance()) {
            case Tolerance.General() -> figures;
            case Tolerance.Bracketed() -> "(" + figures + ")";
            case Tolerance.Letters(var code, var lower, var upper) ->
                figures + " " + code + " (" + String.join(" to ", limits(size)) + ")";
            case Tolerance.Deviations(var lower, var upper) -> figures + " (" + String.join(" to ", limits(size)) + ")";
        };
    }

    /** A diameter: with its sign, unless it is named by a drill's number or letter, which is then spelt out. */
    public Wording diameter(Size size) {
        String figures = figures(size.nominal());
        char first = figures.charAt(0);
        boolean named = first == '#' || Character.isLetter(first);
        return named
                ? Wording.of(figures + " (" + Wording.DIAMETER + LengthText.figures(size.length(), unit) + ")")
                : toleranced(Wording.DIAMETER + figures, size);
    }

    private Wording toleranced(String figures, Size size) {
        return switch (size.tolerance()) {
            case Tolerance.General() -> Wording.size(figures);
            case Tolerance.Bracketed() -> Wording.size("(" + figures + ")");
            case Tolerance.Letters(var code, var lower, var upper) -> limits(figures + " " + code, size);
            case Tolerance.Deviations(var lower, var upper) ->
                upper.equals(lower.negated())
                        ? Wording.size(figures + " ±" + deviation(upper))
                        : Wording.size(figures).limits(signed(upper), signed(lower));
        };
    }

    /** The figures, and after them the limits that a code stands for. */
    private Wording limits(String figures, Size size) {
        String[] both = limits(size);
        return Wording.size(figures).limits(both[0], both[1]);
    }

    /** The upper and the lower limit of a size with a tolerance of its own. */
    private String[] limits(Size size) {
        String text = LimitsText.inward(size.limits(GeneralTolerance.Iso2768.MEDIUM), unit, decimals());
        String bare = text.substring(0, text.length() - unit.symbol().length()).strip();
        int slash = bare.indexOf('/');
        return new String[] {bare.substring(0, slash), bare.substring(slash + 1)};
    }

    private String signed(Length deviation) {
        return LengthText.signedFigures(deviation, unit).replace('-', MINUS);
    }

    private String deviation(Length deviation) {
        return LengthText.figures(deviation, unit);
    }
}
