package chargehand.book.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is asked of the shop.
 *
 * @param asset the machine, vehicle, vessel or structure that the part belongs to
 * @param wants what is wrong or asked for, in the asker's words
 * @param asker who asks
 * @param count how many, from 1
 * @param wantedBy the day it is wanted by, where one was named
 */
public record Request(String asset, String wants, String asker, int count, Optional<LocalDate> wantedBy) {
    /** The most pieces in one job. */
    public static final int MOST = 10_000;

    public Request {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("a job is for 1 to " + MOST + " pieces, not " + count);
        }
        if (asset.isBlank() || wants.isBlank() || asker.isBlank()) {
            throw new IllegalArgumentException("a request says for what, what and who");
        }
    }
}
