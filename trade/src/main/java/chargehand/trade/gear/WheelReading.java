package chargehand.trade.gear;

import java.util.List;

/**
 * What was measured on a wheel, in millimetres.
 *
 * @param outside over the tips
 * @param spans over several teeth, in any order; may be empty
 * @param slack how far a reading may be off: two standard deviations
 */
record WheelReading(int teeth, double outside, List<Span> spans, double slack) {
    WheelReading {
        spans = List.copyOf(spans);
    }

    /**
     * Over several teeth along the flanks.
     *
     * @param over how many teeth
     * @param size what the calliper read (mm)
     */
    record Span(int over, double size) {}

    /** How many figures there are. */
    int count() {
        return 1 + spans.size();
    }
}
