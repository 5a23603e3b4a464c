package chargehand.book;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Who did something and when.
 *
 * @param who the hand's name or initials, never blank
 * @param at the moment, to the millisecond
 */
public record Signed(String who, Instant at) {
    public Signed {
        if (who.isBlank()) {
            throw new IllegalArgumentException("an entry is signed by someone");
        }
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }

    public static Signed now(String who, Clock clock) {
        return new Signed(who, clock.instant());
    }
}
