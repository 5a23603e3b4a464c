package chargehand.web.job;

/**
 * One station on the line of a job.
 *
 * @param note in a few words, what there is of it
 * @param address the page it opens
 * @param here whether this page is its page
 */
public record Station(Name name, String note, String address, State state, boolean here) {
    /** The stations, in the order of the work. */
    public enum Name {
        ASKED_FOR("Asked for", "request"),
        DRAWN("Drawn", "drawing"),
        METHOD("Method", "method"),
        IN_HAND("In hand", "machine"),
        PROVE("Prove", "proving"),
        PASSED("Passed", "passed"),
        GONE_OUT("Gone out", "out");

        private final String label;
        private final String page;

        Name(String label, String page) {
            this.label = label;
            this.page = page;
        }

        public String label() {
            return label;
        }

        String page() {
            return page;
        }
    }

    /** How a station lies to the work. */
    public enum State {
        DONE("done"),
        NOW("now"),
        AHEAD("ahead");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
