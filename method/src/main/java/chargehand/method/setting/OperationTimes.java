package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;

/** What handling takes beside the cutting itself. Shop estimates of ours until the shop's own times are learnt. */
public final class OperationTimes {
    /** Taking another tool and bringing it up (min). */
    public static final double CHANGE_TOOL_MINUTES = 0.7;
    /** Measuring one size and writing it down (min). */
    public static final double READING_MINUTES = 0.4;

    static final double PASS_MINUTES = 0.35;
    static final double HAND_FEED_MINUTES = 0.5;
    static final double CHANGE_WHEELS_MINUTES = 8;
    static final double DIE_MINUTES = 1.5;
    static final double INDEX_MINUTES = 0.5;

    private OperationTimes() {}

    /** The minutes a length takes at so much for each turn. */
    static double feeding(Length length, Length perTurn, SpindleSpeed speed) {
        return length.over(perTurn) / speed.rpm();
    }
}
