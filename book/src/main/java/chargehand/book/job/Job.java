package chargehand.book.job;

import java.time.LocalDate;

/**
 * One request and how it stands.
 *
 * @param number given by the book
 * @param request what is asked for
 * @param askedOn the day it was asked
 * @param standing where it stands
 * @param version counts the changes to the request, from 1, so that two people cannot overwrite each other
 */
public record Job(JobNumber number, Request request, LocalDate askedOn, Standing standing, int version) {
    public Stage stage() {
        return standing.stage();
    }

    public Job with(Standing changed) {
        return new Job(number, request, askedOn, changed, version);
    }

    public Job with(Request changed) {
        return new Job(number, changed, askedOn, standing, version + 1);
    }
}
