package chargehand.timing;

/**
 * One line of the table.
 *
 * @param what is measured
 * @param took as text with its unit
 * @param runs how often, and how it was taken; empty where it was counted once
 * @param aim what it should be, empty where nothing is set
 * @param beside the same done another way, or what else is known of it; empty where there is nothing
 * @param load the machine's load when it was done
 */
record Measured(String what, String took, String runs, String aim, String beside, String load) {
    static Measured of(String what, Stopwatch watch) {
        return new Measured(what, watch.text(), watch.runs(), "", "", Machine.load());
    }

    /** A figure that is no time, or is counted from several. */
    static Measured of(String what, String figure) {
        return new Measured(what, figure, "", "", "", Machine.load());
    }

    Measured aim(String should) {
        return new Measured(what, took, runs, should, beside, load);
    }

    Measured beside(String other) {
        return new Measured(what, took, runs, aim, other, load);
    }
}
