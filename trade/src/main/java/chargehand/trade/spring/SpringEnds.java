package chargehand.trade.spring;

import chargehand.measure.Length;

/** How the ends of a compression spring are made (Shigley table 10-1, from memory). */
public enum SpringEnds {
    PLAIN("plain", 0, 1),
    PLAIN_GROUND("plain and ground", 1, 0),
    CLOSED("closed", 2, 1),
    CLOSED_GROUND("closed and ground", 2, 0);

    private final String word;
    private final int dead;
    private final int proud;

    SpringEnds(String word, int dead, int proud) {
        this.word = word;
        this.dead = dead;
        this.proud = proud;
    }

    /** The words it is asked by. */
    public String word() {
        return word;
    }

    /** All coils, with those at the ends that give no way. */
    public double total(double active) {
        return active + dead;
    }

    /** The length with all coils touching. */
    public Length solid(Length wire, double active) {
        return wire.times(total(active) + proud);
    }
}
