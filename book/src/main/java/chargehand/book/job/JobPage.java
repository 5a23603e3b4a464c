package chargehand.book.job;

import java.util.List;

/**
 * One page of the job book.
 *
 * @param lines the jobs on it, none when the page lies beyond the last
 * @param total how many jobs there are on all pages
 * @param query what was asked
 */
public record JobPage(List<JobLine> lines, int total, JobQuery query) {
    public JobPage {
        lines = List.copyOf(lines);
    }

    /** How many pages there are; 1 when nothing was found. */
    public int pages() {
        return Math.max(1, Math.ceilDiv(total, query.size()));
    }
}
