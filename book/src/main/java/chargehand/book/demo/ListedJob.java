package chargehand.book.demo;

import chargehand.book.job.RequestAsWritten;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A job as a list of jobs has it.
 *
 * @param line where it begins in the file, counted from 1
 * @param request what is asked for; the day wanted by is still counted from the day the list is read
 * @param askedDaysAgo how long ago it was asked, from 0
 * @param wantedInDays by when it is wanted, where a day was named
 * @param part the name of its drawing, where there is one
 * @param waitsFor what it is stopped for, where it is
 */
record ListedJob(
        int line,
        RequestAsWritten request,
        int askedDaysAgo,
        Optional<Integer> wantedInDays,
        Optional<String> part,
        Optional<String> waitsFor) {

    /** The clock as it stood when the job was asked for. */
    Clock askedBy(Clock clock) {
        return Clock.offset(clock, Duration.ofDays(-askedDaysAgo));
    }

    /** The request with its day. */
    RequestAsWritten request(Clock clock) {
        return wantedInDays
                .map(days -> request.with(
                        RequestAsWritten.WANTED_BY,
                        LocalDate.now(clock).plusDays(days).toString()))
                .orElse(request);
    }
}
