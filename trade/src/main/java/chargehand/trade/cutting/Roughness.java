package chargehand.trade.cutting;

import chargehand.measure.Length;

/**
 * The finish that a round-nosed tool leaves in theory: Ra = f² / (32 r), the mean of the scallops. It holds while the feed
 * is small beside the nose; a built-up edge at low speeds makes the true finish up to twice as rough.
 */
public final class Roughness {
    private static final double MEAN_OF_SCALLOPS = 32;
    private static final double HEIGHT_OF_SCALLOPS = 8;

    private Roughness() {}

    /** Ra for a feed and a nose radius. */
    public static Length mean(Length feed, Length nose) {
        return Length.mm(feed.mm() * feed.mm() / (MEAN_OF_SCALLOPS * nose.mm()));
    }

    /** The height of the scallops from valley to ridge. */
    public static Length height(Length feed, Length nose) {
        return Length.mm(feed.mm() * feed.mm() / (HEIGHT_OF_SCALLOPS * nose.mm()));
    }

    /** The most feed that leaves no more than this Ra. */
    public static Length feedFor(Length mean, Length nose) {
        return Length.mm(Math.sqrt(MEAN_OF_SCALLOPS * mean.mm() * nose.mm()));
    }
}
