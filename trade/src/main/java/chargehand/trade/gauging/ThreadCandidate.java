package chargehand.trade.gauging;

import chargehand.measure.Length;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/**
 * A thread that what was measured may be.
 *
 * @param thread the thread
 * @param probability how likely, 0 to 1
 * @param diameterOff diameter measured less the thread's basic one; worn crests make it negative outside, positive inside
 * @param pitchOff pitch measured less the thread's
 * @param likelihood what the probability was made of
 */
record ThreadCandidate(
        ScrewThread thread, double probability, Length diameterOff, Length pitchOff, Likelihood likelihood) {

    /**
     * How a thread is weighed: its parts are multiplied.
     *
     * @param weight how often its series is met
     * @param diameter density of the diameter read (per mm)
     * @param pitch density of the pitch read (per thread to the inch)
     * @param angle likelihood of the angle read, 1 if none was
     * @param taper likelihood of what was said of its taper, 1 if nothing was
     */
    record Likelihood(double weight, double diameter, double pitch, double angle, double taper) {
        double product() {
            return weight * diameter * pitch * angle * taper;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT, "%.2f × %.3g × %.3g × %.3g × %.3g", weight, diameter, pitch, angle, taper);
        }
    }
}
