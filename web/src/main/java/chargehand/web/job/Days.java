package chargehand.web.job;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Days as people say them. */
public final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

    private Days() {}

    public static String say(LocalDate day) {
        return DAY.format(day);
    }

    public static String say(Instant moment) {
        return MOMENT.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** A day and how far off it is. */
    public static String ahead(LocalDate day) {
        long days = ChronoUnit.DAYS.between(LocalDate.now(ZoneId.systemDefault()), day);
        String off = days == 0 ? "today" : days > 0 ? "in " + count(days) : count(-days) + " ago";
        return say(day) + ", " + off;
    }

    public static boolean isPast(LocalDate day) {
        return day.isBefore(LocalDate.now(ZoneId.systemDefault()));
    }

    private static String count(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
