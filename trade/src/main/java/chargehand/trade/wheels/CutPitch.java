package chargehand.trade.wheels;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a train cuts.
 *
 * @param train the wheels and the gearbox
 * @param pitch the pitch cut, exactly
 * @param error pitch cut over pitch wanted, less one, exactly
 */
public record CutPitch(Train train, Pitch pitch, BigFraction error) {
    /** The pitch that a train cuts on a leadscrew, beside the pitch that is wanted. */
    public static CutPitch of(Train train, Pitch leadscrew, Pitch wanted) {
        var pitch = new Pitch(leadscrew.mm().multiply(train.ratio()));
        return new CutPitch(train, pitch, pitch.mm().divide(wanted.mm()).subtract(1));
    }

    public boolean exact() {
        return error.signum() == 0;
    }

    /** How far the thread has run out over a length; negative where it comes out short. */
    public Length errorOver(Length length) {
        return length.times(error.doubleValue());
    }

    /** Turns of the leadscrew for one turn of the work that a pitch needs. */
    public static BigFraction ratio(Pitch wanted, Pitch leadscrew) {
        return wanted.mm().divide(leadscrew.mm());
    }
}
