package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Feeds;
import chargehand.method.plan.Settings;
import chargehand.trade.sum.Working;
import java.util.Optional;

/** Picks a feed from the machine's own list: the coarsest not above what is wanted for this cut. */
final class Feeding {
    /** Roughing feed wanted for each turn (common practice for light machines). */
    static final Length ROUGH = Length.mm(0.2);

    /** Finishing feed wanted for each turn. */
    static final Length FINE = Length.mm(0.1);

    /** Feed for each turn by hand, for reckoning time only. */
    static final Length BY_HAND = Length.mm(0.1);

    private Feeding() {}

    static Optional<Length> pick(Feeds feeds, Length wanted, LengthUnit unit, Working working) {
        if (feeds.isByHand()) {
            return Optional.empty();
        }
        Length picked = feeds.notAbove(wanted).orElse(feeds.plate().getFirst());
        working.fact(
                "Feed for each turn: the coarsest on the plate not above " + LengthText.in(wanted, unit),
                LengthText.in(picked, unit),
                CutKind.SOURCE);
        return Optional.of(picked);
    }

    static Settings.Feed perTurn(Length feed) {
        return new Settings.Feed.PerTurn(feed);
    }
}
