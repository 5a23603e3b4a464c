package chargehand.web.sum;

import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.OutcomeTree;
import chargehand.trade.sum.Sum;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Pages;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.jr.ob.JSON;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sums for other programs on this machine, as JSON: {@code POST /sums} takes a line {@code {"id", "sum", "ask"}} or a
 * list of lines, {@code POST /sums/NAME} takes the ask of one sum.
 */
public final class SumResource implements Pages {
    private static final JSON TEXT =
            JSON.std.with(JSON.Feature.USE_BIG_DECIMAL_FOR_FLOATS, JSON.Feature.WRITE_NULL_PROPERTIES);
    private static final int MOST_LINES = 10_000;

    private final Counter counter;

    public SumResource(Counter counter) {
        this.counter = counter;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/sums", this::lines);
        routes.post("/sums/{sum}", this::one);
    }

    private void lines(Context context) {
        Object asked = read(context.body()).orElse("");
        switch (asked) {
            case Map<?, ?> line -> answer(context, HttpStatus.OK, answered(line));
            case List<?> lines
            when lines.size() <= MOST_LINES ->
                answer(
                        context,
                        HttpStatus.OK,
                        lines.stream().map(this::answered).toList());
            case List<?> lines -> refuse(context, "at most " + MOST_LINES + " lines are answered at once.");
            default -> refuse(context, "this takes a JSON object {\"id\", \"sum\", \"ask\"}, or a list of them.");
        }
    }

    private Map<String, Object> answered(Object line) {
        return line instanceof Map<?, ?> fields
                ? counter.sums().answer(named(fields), counter.unit())
                : OutcomeTree.of(new Outcome.Refused("", "a line is an object {\"id\", \"sum\", \"ask\"}."));
    }

    private static Map<String, Object> named(Map<?, ?> fields) {
        var named = new LinkedHashMap<String, Object>();
        fields.forEach((name, value) -> named.put(String.valueOf(name), value));
        return named;
    }

    private void one(Context context) {
        Sum sum = SumPages.sum(counter, context);
        if (!(read(context.body()).orElse("") instanceof Map<?, ?> ask)) {
            refuse(context, "this takes a JSON object that holds the fields by name.");
            return;
        }
        Map<String, Object> tree = counter.sums().answer(Map.of("sum", sum.name(), "ask", named(ask)), counter.unit());
        answer(context, tree.containsKey("error") ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.OK, tree);
    }

    private static Optional<Object> read(String body) {
        try {
            return Optional.ofNullable(TEXT.anyFrom(body));
        } catch (JsonProcessingException | NumberFormatException unreadable) {
            return Optional.empty();
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
    }

    private static void refuse(Context context, String say) {
        answer(context, HttpStatus.BAD_REQUEST, OutcomeTree.of(new Outcome.Refused("", say)));
    }

    private static void answer(Context context, HttpStatus status, Object tree) {
        try {
            context.status(status)
                    .contentType("application/json; charset=utf-8")
                    .result(TEXT.asString(tree));
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
    }
}
