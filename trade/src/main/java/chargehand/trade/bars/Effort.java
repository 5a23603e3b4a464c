package chargehand.trade.bars;

/** How much trying is still allowed, so that a large ask is answered as well as can be in a moment. */
final class Effort {
    private long left;

    Effort(long steps) {
        left = steps;
    }

    /** Spends one step; false when there is none. */
    boolean spend() {
        left--;
        return left >= 0;
    }

    /** Spends as many steps as something took. */
    void spend(long steps) {
        left -= steps;
    }

    boolean isSpent() {
        return left <= 0;
    }

    /** Whether a step was asked for that there was not. */
    boolean isOverspent() {
        return left < 0;
    }
}
