package chargehand.method.estimate;

import chargehand.measure.WorkTime;
import chargehand.method.estimate.Estimate.Share;
import chargehand.method.estimate.Estimate.TimeRange;
import java.util.List;

/**
 * How far the times of each kind of work may be out. Shop estimates of ours until the shop's own times are learnt: what people
 * do by hand goes wrong more often and further than what a feed does, and all of it rather longer than shorter.
 */
enum Spread {
    SETTING("setting up", 0.8, 1.5),
    HANDLING("handling", 0.85, 1.4),
    CUTTING("cutting", 0.9, 1.25),
    GAUGING("gauging", 0.9, 1.4);

    private final String words;
    private final double least;
    private final double most;

    Spread(String words, double least, double most) {
        this.words = words;
        this.least = least;
        this.most = most;
    }

    String words() {
        return words;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    WorkTime of(Share one) {
        return switch (this) {
            case SETTING -> one.setting();
            case HANDLING -> one.handling();
            case CUTTING -> one.cutting();
            case GAUGING -> one.gauging();
        };
    }

    /** The time of this kind in all set-ups. */
    WorkTime of(List<Share> shares) {
        return shares.stream().map(this::of).reduce(WorkTime.ZERO, WorkTime::plus);
    }

    /** All kinds of one set-up's time, each counted so many times over, from the least to the most. */
    static TimeRange range(Share share) {
        WorkTime low = WorkTime.ZERO;
        WorkTime high = WorkTime.ZERO;
        for (Spread kind : values()) {
            low = low.plus(kind.of(share).times(kind.least));
            high = high.plus(kind.of(share).times(kind.most));
        }
        return new TimeRange(low, share.time(), high);
    }
}
