package chargehand.web.serving;

import java.util.List;

/**
 * What stands round every page.
 *
 * @param shop the shop's name
 * @param title what the page is about
 * @param section which part of the book it belongs to
 */
public record Frame(String shop, String title, Section section) {
    /** The parts of the book, as the strip at the top names them. */
    public enum Section {
        JOBS("Job book", "/"),
        NEW_JOB("New job", "/jobs/new"),
        KIT("Kit and rack", "/kit"),
        SUMS("Sums", "/sums"),
        NONE("", "");

        private final String label;
        private final String address;

        Section(String label, String address) {
            this.label = label;
            this.address = address;
        }

        public String label() {
            return label;
        }

        public String address() {
            return address;
        }

        /** The sections that the strip shows. */
        public static List<Section> shown() {
            return List.of(JOBS, NEW_JOB, KIT, SUMS);
        }
    }
}
