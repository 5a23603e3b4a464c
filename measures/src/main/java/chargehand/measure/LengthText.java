package chargehand.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Writes lengths for people, as the trade writes them. Unless a method says otherwise a figure is rounded to the stated
 * number of decimals, halves away from zero; a length that rounds to nothing has no sign. Every text reads back through
 * {@link LengthReader}.
 */
public final class LengthText {
    /** Decimals of an inch for a thousandth. */
    public static final int THOU = 3;

    /** Decimals of an inch for a tenth of a thousandth. */
    public static final int TENTH_OF_A_THOU = 4;

    /** Decimals of a millimetre for a hundredth. */
    public static final int HUNDREDTH_MM = 2;

    /** Decimals of a millimetre for a micrometre. */
    public static final int MICROMETRE = 3;

    private static final int EXACT_MM = 6;
    private static final int EXACT_INCH = 9;
    private static final int WORKING_DECIMALS = 12;
    private static final BigDecimal NM_PER_THOU = BigDecimal.valueOf(Length.NM_PER_INCH / 1_000);

    private LengthText() {}

    /** Inches to so many decimals, all of them shown and no nought before the point: {@code .8125 in}. */
    public static String inches(Length length, int decimals) {
        return inchFigures(length, decimals) + " in";
    }

    /** As {@link #inches} without the unit: {@code .8125}. */
    public static String inchFigures(Length length, int decimals) {
        return withoutLeadingNought(rounded(length, LengthUnit.INCH, decimals).toPlainString());
    }

    /** Millimetres to at most so many decimals, noughts at the end left out: {@code 20.64 mm}. */
    public static String mm(Length length, int mostDecimals) {
        return mmFigures(length, mostDecimals) + " mm";
    }

    /** As {@link #mm} without the unit: {@code 20.64}. */
    public static String mmFigures(Length length, int mostDecimals) {
        return trimmed(rounded(length, LengthUnit.MILLIMETRE, mostDecimals), 0).toPlainString();
    }

    /** The vulgar fraction of an inch that this is to the nanometre, down to 64ths: {@code 1 3/8 in}. */
    public static Optional<String> fraction(Length length) {
        return Optional.of(Nearest64.of(length)).filter(Nearest64::isExact).map(Nearest64::text);
    }

    /** Thousandths of an inch to at most one decimal: {@code 5 thou}, {@code 2.5 thou}. */
    public static String thou(Length length) {
        BigDecimal thou = BigDecimal.valueOf(length.nanometres()).divide(NM_PER_THOU, 1, RoundingMode.HALF_UP);
        return trimmed(thou, 0).toPlainString() + " thou";
    }

    /**
     * The usual figure in one unit, to a tenth of a thou or a micrometre: {@code 1.375 in}, {@code .8125 in},
     * {@code 34.925 mm}. Inches keep at least three decimals, millimetres none that says nothing; nought is {@code 0}.
     */
    public static String in(Length length, LengthUnit unit) {
        return figures(length, unit) + " " + unit.symbol();
    }

    /** As {@link #in(Length, LengthUnit)} without the unit. */
    public static String figures(Length length, LengthUnit unit) {
        return figures(rounded(length, unit, finest(unit)), unit);
    }

    /** A value in the unit, with at least three decimals of an inch and no needless nought of a millimetre. */
    static String figures(BigDecimal value, LengthUnit unit) {
        return switch (unit) {
            case INCH ->
                value.signum() == 0
                        ? "0"
                        : withoutLeadingNought(trimmed(value, THOU).toPlainString());
            case MILLIMETRE -> trimmed(value, 0).toPlainString();
        };
    }

    /** The decimals of the usual figure: a tenth of a thou, or a micrometre. */
    static int finest(LengthUnit unit) {
        return switch (unit) {
            case INCH -> TENTH_OF_A_THOU;
            case MILLIMETRE -> MICROMETRE;
        };
    }

    /** Both units, the one of the dial first: {@code 1.375 in (34.925 mm)}. */
    public static String both(Length length, LengthUnit first) {
        return in(length, first) + " (" + in(length, first.other()) + ")";
    }

    /** A deviation with its sign, none on nought: {@code +0.021 mm}, {@code -.0005 in}, {@code 0 mm}. */
    public static String signed(Length length, LengthUnit unit) {
        return signedFigures(length, unit) + " " + unit.symbol();
    }

    /** As {@link #signed} without the unit. */
    public static String signedFigures(Length length, LengthUnit unit) {
        String figures = figures(length, unit);
        boolean plus = length.isPositive() && !figures.equals("0");
        return (plus ? "+" : "") + figures;
    }

    /**
     * Every figure there is, so that it reads back as the very same length: up to six decimals of a millimetre (whole
     * nanometres), or nine of an inch (finer than a nanometre, so rounded past telling).
     */
    public static String exact(Length length, LengthUnit unit) {
        return switch (unit) {
            case INCH ->
                withoutLeadingNought(
                                trimmed(rounded(length, unit, EXACT_INCH), 0).toPlainString()) + " in";
            case MILLIMETRE -> mm(length, EXACT_MM);
        };
    }

    private static BigDecimal rounded(Length length, LengthUnit unit, int decimals) {
        return rounded(length, unit, decimals, RoundingMode.HALF_UP);
    }

    /** The length in a unit at so many decimals, rounded as asked. */
    static BigDecimal rounded(Length length, LengthUnit unit, int decimals, RoundingMode mode) {
        if (decimals < 0 || decimals > WORKING_DECIMALS) {
            throw new IllegalArgumentException(
                    "decimals of a length must lie within 0 and " + WORKING_DECIMALS + ", not " + decimals);
        }
        long nanometresInOne = switch (unit) {
            case INCH -> Length.NM_PER_INCH;
            case MILLIMETRE -> Length.NM_PER_MM;
        };
        return BigDecimal.valueOf(length.nanometres()).divide(BigDecimal.valueOf(nanometresInOne), decimals, mode);
    }

    /** Without the noughts at the end, but with at least so many decimals. */
    static BigDecimal trimmed(BigDecimal value, int leastDecimals) {
        BigDecimal stripped = value.stripTrailingZeros();
        int scale = Math.max(stripped.scale(), Math.min(leastDecimals, value.scale()));
        return stripped.setScale(Math.max(scale, 0), RoundingMode.UNNECESSARY);
    }

    /** The trade writes {@code .8125} and {@code -.002} for inches. */
    static String withoutLeadingNought(String figures) {
        boolean negative = figures.startsWith("-");
        String size = negative ? figures.substring(1) : figures;
        return (negative ? "-" : "") + (size.startsWith("0.") ? size.substring(1) : size);
    }
}
