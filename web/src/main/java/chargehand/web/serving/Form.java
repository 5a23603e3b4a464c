package chargehand.web.serving;

import chargehand.book.Objection;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A form as it was filled in, with what was objected to: shown again as it was, each objection beside its field.
 *
 * @param values field names to what was typed
 * @param objections what could not be taken
 */
public record Form(Map<String, String> values, List<Objection> objections) {
    /** An empty form. */
    public static final Form EMPTY = new Form(Map.of(), List.of());

    public Form {
        values = Map.copyOf(values);
        objections = List.copyOf(objections);
    }

    /** What was sent. */
    public static Form of(Context context) {
        var values = new LinkedHashMap<String, String>();
        context.formParamMap().forEach((name, given) -> values.put(name, given.isEmpty() ? "" : given.getFirst()));
        return new Form(values, List.of());
    }

    /** The same form with objections. */
    public Form refused(List<Objection> because) {
        return new Form(values, because);
    }

    /** The same form, with what others wrote in some of its fields meanwhile. */
    public Form overtakenBy(Map<String, String> theirs) {
        var because = new ArrayList<Objection>();
        because.add(
                new Objection(
                        "",
                        "Someone else changed this meanwhile, so nothing was kept yet. Look at what differs, then keep it again."));
        theirs.forEach((field, text) ->
                because.add(new Objection(field, "The book now has: " + (text.isEmpty() ? "nothing" : text))));
        return refused(because);
    }

    /** What was typed in a field. */
    public String value(String field) {
        return values.getOrDefault(field, "");
    }

    /** What is said beside a field. */
    public List<String> sayings(String field) {
        return objections.stream()
                .filter(objection -> objection.field().equals(field))
                .map(Objection::say)
                .toList();
    }

    public boolean isRefused() {
        return !objections.isEmpty();
    }

    /** The objections whose field is none of these, to be said at the top. */
    public List<String> elsewhere(List<String> fields) {
        var sayings = new ArrayList<String>();
        for (Objection objection : objections) {
            if (!fields.contains(objection.field())) {
                sayings.add(objection.say());
            }
        }
        return sayings;
    }
}
