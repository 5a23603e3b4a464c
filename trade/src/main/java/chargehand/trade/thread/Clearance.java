package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;

/** The room that power screws leave between the crest of one thread and the root of the other, on radius. */
final class Clearance {
    private static final double COARSE_ACME_INCHES = 0.010;
    private static final double FINE_ACME_INCHES = 0.005;
    private static final double FINEST_COARSE_ACME_PITCH_INCHES = 0.1;
    private static final double HALF_A_NANOMETRE_IN_INCHES = 2e-8;

    private Clearance() {}

    static Length of(ThreadForm form, Pitch pitch) {
        return switch (form) {
            case ISO_METRIC, UNIFIED, WHITWORTH, WHITWORTH_PIPE, BRITISH_ASSOCIATION, CYCLE, SQUARE -> Length.ZERO;
            case TRAPEZOIDAL -> trapezoidal(pitch.inMm());
            case ACME -> acme(pitch.inInches());
        };
    }

    /** ISO 2901 gives the clearance by bands of its listed pitches; no listed pitch lies between two bands. */
    private static Length trapezoidal(double pitchMm) {
        if (pitchMm < 2) {
            return Length.mm(0.15);
        }
        if (pitchMm <= 5) {
            return Length.mm(0.25);
        }
        return Length.mm(pitchMm <= 12 ? 0.5 : 1.0);
    }

    /** ASME B1.5: ten threads to the inch and coarser, 0.010 in; finer, 0.005 in. */
    private static Length acme(double pitchInches) {
        boolean coarse = pitchInches > FINEST_COARSE_ACME_PITCH_INCHES - HALF_A_NANOMETRE_IN_INCHES;
        return Length.in(coarse ? COARSE_ACME_INCHES : FINE_ACME_INCHES);
    }
}
