package chargehand.measure;

import java.util.Locale;

/**
 * The sixty-fourth of an inch nearest to a length, and how far off it is.
 *
 * @param sixtyFourths how many 64ths, negative for a negative length; the larger in size of two equally near
 * @param off the length less the fraction: positive when the length is larger than the fraction says
 */
public record Nearest64(long sixtyFourths, Length off) {
    private static final long NM_PER_64TH = Length.NM_PER_INCH / 64;
    private static final int PARTS = 64;

    /** The 64th nearest to {@code length}. */
    public static Nearest64 of(Length length) {
        long whole = Math.floorDiv(2 * Math.abs(length.nanometres()) + NM_PER_64TH, 2 * NM_PER_64TH);
        long signed = length.isNegative() ? -whole : whole;
        return new Nearest64(signed, new Length(length.nanometres() - signed * NM_PER_64TH));
    }

    /** Whether the length is that fraction to the nanometre. */
    public boolean isExact() {
        return off.isZero();
    }

    /** The fraction alone, in lowest terms and without its unit: {@code 13/16}, {@code 1 3/8}, {@code 2}, {@code 0}. */
    public String fraction() {
        long size = Math.abs(sixtyFourths);
        long whole = size / PARTS;
        long part = size % PARTS;
        String sign = sixtyFourths < 0 ? "-" : "";
        if (part == 0) {
            return sign + whole;
        }
        long shared = Long.lowestOneBit(part);
        String fraction = part / shared + "/" + PARTS / shared;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }

    /** The fraction and, when it is off, by how much: {@code 13/16 in}, {@code 13/16 in + .0003}. */
    public String text() {
        if (isExact()) {
            return fraction() + " in";
        }
        String by = LengthText.inchFigures(off.abs(), LengthText.TENTH_OF_A_THOU);
        return String.format(Locale.ROOT, "%s in %s %s", fraction(), off.isNegative() ? "-" : "+", by);
    }
}
