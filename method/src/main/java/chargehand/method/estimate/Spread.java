package chargehand.method.estimate;

import chargehand.measure.WorkTime;
import chargehand.method.estimate.Estimate.Share;
import chargehand.method.estimate.Estimate.TimeRange;
import java.util.List;
import java.util.function.Function;

/**
 * How far the times of each kind of work may be out. Shop estimates of ours until the shop's own times are learnt: what people
 * do by hand goes wrong more often and further than what a feed does, and all of it rather longer than shorter.
 */
enum Spread {
    SETTING("setting up", 0.8, 1.5, Share::setting),
    HANDLING("handling", 0.85, 1.4, Share::handling),
    CUTTING("cutting", 0.9, 1.25, Share::cutting),
    GAUGING("gauging", 0.9, 1.4, Share::gauging);

    private final String words;
    private final double least;
    private final double most;
    private final Function<Share, WorkTime> share;

    Spread(String words, double least, double most, Function<Share, WorkTime> share) {
        this.words = words;
        this.least = least;
        this.most = most;
        this.share = share;
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
        return share.apply(one);
    }

    /** The time of this kind in all set-ups. */
    WorkTime of(List<Share> shares) {
        return shares.stream().map(share).reduce(WorkTime.ZERO, WorkTime::plus);
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
