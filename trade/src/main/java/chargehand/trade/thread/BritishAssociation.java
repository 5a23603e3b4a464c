package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * British Association threads by their rule, BS 93: number k has the pitch 0.9 to the power k (mm, to two places) and the
 * diameter 6 times the unrounded pitch to the power 1.2 (mm, to two figures).
 */
final class BritishAssociation {
    /** BS 93 lists numbers 0 to 16; smaller instrument threads are left out. */
    static final int LAST_NUMBER = 16;

    private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);

    private BritishAssociation() {}

    static ScrewThread thread(int number) {
        double pitch = Math.pow(0.9, number);
        double major =
                new BigDecimal(6 * Math.pow(pitch, 1.2)).round(TWO_FIGURES).doubleValue();
        String rounded = new BigDecimal(pitch).setScale(2, RoundingMode.HALF_UP).toPlainString();
        return new ScrewThread(
                ThreadSeries.BA, Integer.toString(number), Length.mm(major), Pitch.ofMm(rounded), 1, false);
    }
}
