package chargehand.measure;

import java.math.BigInteger;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Pitches: {@code 19 tpi}, {@code 11 1/2 tpi}, {@code 1.5 mm}, {@code 1,5}, {@code 0.05 in}, {@code 1/8 in pitch}. A bare
 * number is a pitch in millimetres; in inches it could as well be threads to the inch and is refused.
 */
final class PitchNotation implements Notation<Pitch> {
    private static final Set<String> THREADS = Set.of("tpi", "threads/in", "threadstothein", "/in", "tothein");
    private static final BigFraction LEAST_MM = BigFraction.of(1, 1000);
    private static final BigFraction MOST_MM = BigFraction.of(1000);
    private static final BigFraction MM_PER_INCH = BigFraction.of(127, 5);
    private static final int COARSEST_EIGHTHS = 8;

    @Override
    public String name() {
        return "pitch";
    }

    @Override
    public String examples() {
        return "19 tpi, 1.5 mm or 0.05 in";
    }

    @Override
    public Pitch read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name()));
        tokens.take('+');
        Numeral numeral = Numeral.take(tokens).orElseThrow(() -> Plainly.isNot(tokens, this));
        if (numeral.isZero()) {
            throw new Unreadable(tokens.quoted() + " is no pitch: it must be more than nought.");
        }
        return inBounds(pitchMm(numeral, tokens, bareUnit), tokens);
    }

    private BigFraction pitchMm(Numeral numeral, Tokens tokens, LengthUnit bareUnit) {
        Optional<LengthMark> mark = tokens.peek().flatMap(LengthMark::find);
        tokens.skip(mark.isPresent() ? 1 : 0);
        boolean said = tokens.take("pitch");
        if (mark.isPresent() || said || tokens.atEnd()) {
            Plainly.end(tokens, this);
            return numeral.value()
                    .multiply(mark.orElseGet(() -> bare(numeral, said, tokens, bareUnit))
                            .mm());
        }
        String rest = tokens.rest();
        if (THREADS.contains(UnitPhrase.take(tokens))) {
            return MM_PER_INCH.divide(numeral.value());
        }
        throw Plainly.unknownUnit(tokens, rest, "tpi, " + LengthMark.ALL, this);
    }

    private static LengthMark bare(Numeral numeral, boolean said, Tokens tokens, LengthUnit bareUnit) {
        LengthUnit unit = numeral.isVulgar() ? LengthUnit.INCH : bareUnit;
        boolean fractionBelowOne = numeral.isVulgar() && numeral.value().compareTo(BigFraction.ONE) < 0;
        if (unit == LengthUnit.INCH && !said && !fractionBelowOne) {
            String number = tokens.written();
            throw new Unreadable("'" + number + "' could be " + number + " threads to the inch or a pitch of " + number
                    + " in: write " + number + " tpi or " + number + " in.");
        }
        return LengthMark.of(unit);
    }

    private Pitch inBounds(BigFraction mm, Tokens tokens) {
        if (mm.compareTo(LEAST_MM) < 0 || mm.compareTo(MOST_MM) > 0) {
            throw new Unreadable(
                    tokens.quoted() + " is no pitch that can be cut: it lies within 0.001 mm and 1000 mm.");
        }
        return new Pitch(mm);
    }

    /** Millimetres to four decimals and threads to the inch to three, or in eighths where that is exact. */
    @Override
    public String text(Pitch pitch, LengthUnit first) {
        String mm = Figures.atMost(4, pitch.inMm()) + " mm";
        String tpi = tpi(pitch.tpi()) + " tpi";
        return switch (first) {
            case MILLIMETRE -> mm + " (" + tpi + ")";
            case INCH -> tpi + " (" + mm + ")";
        };
    }

    private static String tpi(BigFraction tpi) {
        BigFraction eighths = tpi.multiply(COARSEST_EIGHTHS);
        if (!eighths.getDenominator().equals(BigInteger.ONE)) {
            return Figures.atMost(3, tpi.doubleValue());
        }
        return new Nearest64(eighths.longValue() * 8, Length.ZERO).fraction();
    }
}
