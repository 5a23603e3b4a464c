package chargehand.trade.thread;

import chargehand.measure.Angle;
import chargehand.measure.Pitch;

/** The shape of a thread's groove, the same for every size of its kind. */
public enum ThreadForm {
    ISO_METRIC("ISO metric, 60°"),
    UNIFIED("Unified, 60°"),
    WHITWORTH("Whitworth, 55° rounded"),
    WHITWORTH_PIPE("Whitworth pipe, 55° rounded"),
    BRITISH_ASSOCIATION("British Association, 47½° rounded"),
    CYCLE("Cycle, 60° rounded"),
    TRAPEZOIDAL("ISO trapezoidal, 30°"),
    ACME("Acme, 29°"),
    SQUARE("Square");

    private final String title;

    ThreadForm(String title) {
        this.title = title;
    }

    /** What a person calls it. */
    public String title() {
        return title;
    }

    /** The angle between the flanks; zero for a square thread. */
    public Angle includedAngle() {
        return Angle.degrees(FormRules.of(this).angleDegrees());
    }

    /** The standard that gives the form. */
    public String source() {
        return FormRules.of(this).source();
    }

    /** The dimensions of the form at this pitch. */
    public ThreadProfile at(Pitch pitch) {
        return ThreadProfile.of(this, pitch);
    }
}
