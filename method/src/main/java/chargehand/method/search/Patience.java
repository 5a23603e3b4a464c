package chargehand.method.search;

/**
 * How many set-ups a planning may weigh before it gives up, so that no part, however odd, keeps anyone waiting. The demo parts
 * need a few hundred.
 */
final class Patience {
    private final long most;
    private long spent;

    Patience(long most) {
        this.most = most;
    }

    void spend() {
        spent++;
    }

    boolean isLeft() {
        return spent < most;
    }

    /** How many have been weighed. */
    long spent() {
        return spent;
    }
}
