package chargehand.trade.packer;

/**
 * What the valve is to be set to. Bar and mm.
 *
 * @param target pressure to lift at
 * @param tolerance either way
 * @param most pressure never to be exceeded
 * @param adds whether more packer raises the pressure
 * @param step finest change of thickness that can be made
 */
record PackerAim(double target, double tolerance, double most, boolean adds, double step) {
    /** A packer that came out too thin must be made again; one too thick is skimmed: the second costs half. */
    private static final double MADE_AGAIN = 2;

    double low() {
        return target - tolerance;
    }

    double high() {
        return target + tolerance;
    }

    boolean isInside(double pressure) {
        return pressure >= low() && pressure <= high();
    }

    /** What a test is likely to cost: a miss on the side from which the packer can be skimmed costs less. */
    double cost(Bell reads) {
        double below = reads.below(low());
        double above = 1 - reads.below(high());
        return adds ? MADE_AGAIN * below + above : below + MADE_AGAIN * above;
    }

    /** Whether even the upper end of what may come stays at or under the pressure never to be exceeded. */
    boolean isSafe(Bell reads) {
        return reads.high() <= most;
    }
}
