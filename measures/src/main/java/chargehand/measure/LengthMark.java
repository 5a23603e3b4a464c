package chargehand.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The units of length that may be written after a number; each is a whole number of nanometres. */
enum LengthMark {
    MICROMETRE(1_000L, LengthUnit.MILLIMETRE),
    MILLIMETRE(Length.NM_PER_MM, LengthUnit.MILLIMETRE),
    CENTIMETRE(10 * Length.NM_PER_MM, LengthUnit.MILLIMETRE),
    METRE(1_000 * Length.NM_PER_MM, LengthUnit.MILLIMETRE),
    THOU(Length.NM_PER_INCH / 1_000, LengthUnit.INCH),
    INCH(Length.NM_PER_INCH, LengthUnit.INCH),
    FOOT(12 * Length.NM_PER_INCH, LengthUnit.INCH);

    /** The units as a sentence lists them. */
    static final String ALL = "mm, µm, cm, m, in, ft and thou";

    private final long nanometres;
    private final LengthUnit unit;

    LengthMark(long nanometres, LengthUnit unit) {
        this.nanometres = nanometres;
        this.unit = unit;
    }

    static LengthMark of(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> MILLIMETRE;
            case INCH -> INCH;
        };
    }

    /** The unit that a word or sign stands for, if it is one. */
    static Optional<LengthMark> find(Token token) {
        return switch (token.small()) {
            case "µm", "um", "micron", "microns", "micrometre", "micrometres" -> Optional.of(MICROMETRE);
            case "mm", "millimetre", "millimetres" -> Optional.of(MILLIMETRE);
            case "cm", "centimetre", "centimetres" -> Optional.of(CENTIMETRE);
            case "m", "metre", "metres" -> Optional.of(METRE);
            case "thou", "thous", "thousandth", "thousandths" -> Optional.of(THOU);
            case "in", "inch", "inches", "\"" -> Optional.of(INCH);
            case "ft", "foot", "feet", "'" -> Optional.of(FOOT);
            default -> Optional.empty();
        };
    }

    /** The dial unit this belongs to. */
    LengthUnit unit() {
        return unit;
    }

    /**
     * The unit that a bare number takes when it stands beside a number in this one: {@code 1 - 5 thou} is an inch less
     * five thou, while {@code 1.2 - 1 m} is metres throughout.
     */
    LengthMark beside() {
        return switch (this) {
            case MICROMETRE -> MILLIMETRE;
            case THOU -> INCH;
            case MILLIMETRE, CENTIMETRE, METRE, INCH, FOOT -> this;
        };
    }

    /** One of this unit in millimetres, exactly. */
    BigFraction mm() {
        return BigFraction.of(BigInteger.valueOf(nanometres), BigInteger.valueOf(Length.NM_PER_MM));
    }

    /** So many of this unit in nanometres, to the nearest whole one, halves away from zero. */
    BigInteger nanometres(BigFraction count) {
        BigFraction exact = count.multiply(BigInteger.valueOf(nanometres));
        return new BigDecimal(exact.getNumerator())
                .divide(new BigDecimal(exact.getDenominator()), 0, RoundingMode.HALF_UP)
                .toBigIntegerExact();
    }
}
