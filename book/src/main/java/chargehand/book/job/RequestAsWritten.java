package chargehand.book.job;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Wording;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A request as somebody wrote it, field by field, before anything is understood.
 *
 * @param fields what is written in each of {@link #ASSET}, {@link #WANTS}, {@link #ASKER}, {@link #COUNT} (one when left
 *     out) and {@link #WANTED_BY} (may be left out); others are ignored
 */
public record RequestAsWritten(Map<String, String> fields) {
    public static final String ASSET = "asset";
    public static final String WANTS = "wants";
    public static final String ASKER = "asker";
    public static final String COUNT = "count";

    /** A day as {@code 2026-03-14}. */
    public static final String WANTED_BY = "wantedBy";

    private static final List<Wording> WORDS = List.of(
            new Wording(ASSET, "The asset it belongs to", 200),
            new Wording(WANTS, "What is wrong or wanted", 4_000),
            new Wording(ASKER, "The name of who asks", 120));
    private static final int MOST_DIGITS = 9;
    private static final int MOST_YEARS = 20;

    public RequestAsWritten {
        fields = Map.copyOf(fields);
    }

    /** The same with one field written so. */
    public RequestAsWritten with(String field, String text) {
        var changed = new HashMap<>(fields);
        changed.put(field, text);
        return new RequestAsWritten(changed);
    }

    /** A request as it would be written. */
    public static RequestAsWritten of(Request request) {
        return new RequestAsWritten(Map.of(
                ASSET, request.asset(),
                WANTS, request.wants(),
                ASKER, request.asker(),
                COUNT, Integer.toString(request.count()),
                WANTED_BY, request.wantedBy().map(LocalDate::toString).orElse("")));
    }

    /** What is written in a field, without the blanks around it; nothing when it is left out. */
    public String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    /** The request that this means, or every objection to it. */
    public Entered<Request> read(LocalDate askedOn) {
        var objections = new ArrayList<Objection>();
        WORDS.forEach(wording -> wording.objectionTo(text(wording.field())).ifPresent(objections::add));
        countObjection().ifPresent(objections::add);
        wantedByObjection(askedOn).ifPresent(objections::add);
        return objections.isEmpty() ? Entered.done(request()) : Entered.refused(objections);
    }

    private Request request() {
        return new Request(text(ASSET), text(WANTS), text(ASKER), count().orElseThrow(), wantedBy());
    }

    private Optional<Integer> count() {
        String count = text(COUNT);
        if (count.isEmpty()) {
            return Optional.of(1);
        }
        return count.matches("[0-9]{1," + MOST_DIGITS + "}") ? Optional.of(Integer.parseInt(count)) : Optional.empty();
    }

    private Optional<Objection> countObjection() {
        boolean fits =
                count().filter(count -> count >= 1 && count <= Request.MOST).isPresent();
        return fits
                ? Optional.empty()
                : Optional.of(new Objection(
                        COUNT,
                        "How many must be a whole number from 1 to " + Request.MOST + ", not '" + text(COUNT) + "'."));
    }

    private Optional<LocalDate> wantedBy() {
        return text(WANTED_BY).isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text(WANTED_BY)));
    }

    private Optional<Objection> wantedByObjection(LocalDate askedOn) {
        try {
            return wantedBy().flatMap(day -> objection(day, askedOn));
        } catch (DateTimeParseException unread) {
            return wantedByObjection("The day it is wanted by is written like " + askedOn.plusWeeks(2) + ", not '"
                    + unread.getParsedString() + "'.");
        }
    }

    private static Optional<Objection> objection(LocalDate day, LocalDate askedOn) {
        if (day.isBefore(askedOn)) {
            return wantedByObjection("It is asked for on " + askedOn + " and cannot be wanted by " + day
                    + "; give a later day or none.");
        }
        return day.isAfter(askedOn.plusYears(MOST_YEARS))
                ? wantedByObjection(
                        day + " lies more than " + MOST_YEARS + " years ahead; give an earlier day or none.")
                : Optional.empty();
    }

    private static Optional<Objection> wantedByObjection(String say) {
        return Optional.of(new Objection(WANTED_BY, say));
    }
}
