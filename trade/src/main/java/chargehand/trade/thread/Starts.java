package chargehand.trade.thread;

import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** How many threads run side by side: the lead over the pitch, which must be a whole number. */
final class Starts {
    private Starts() {}

    static int of(Pitch lead, Pitch pitch) {
        BigFraction starts = lead.mm().divide(pitch.mm());
        if (!starts.getDenominator().equals(BigInteger.ONE)) {
            throw new Unreadable("a lead of " + Designation.decimal(lead.mm())
                    + " mm is not a whole number of pitches of " + Designation.decimal(pitch.mm()) + " mm.");
        }
        return starts.getNumerator().intValueExact();
    }
}
