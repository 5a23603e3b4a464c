package chargehand.trade.holding;

import java.util.Optional;
import java.util.Set;

/**
 * A way to hold work true where the chuck does not.
 *
 * @param say what to use, in words
 * @param needs what must be owned for it; empty where it can be made or is at hand
 */
record Instead(String say, Optional<OwnedHolding> needs) {
    static Instead atHand(String say) {
        return new Instead(say, Optional.empty());
    }

    static Instead with(OwnedHolding needs, String say) {
        return new Instead(say, Optional.of(needs));
    }

    boolean isFor(Set<OwnedHolding> owned) {
        return needs.map(owned::contains).orElse(true);
    }
}
