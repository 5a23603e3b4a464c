package chargehand.web.sum;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.Sum;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The list of the sums, a page for each, and the reference with worked examples: all made from the sums' declarations. */
public final class SumPages implements Pages {
    private final Counter counter;
    private final Views views;
    private final ShopsOwn own;

    public SumPages(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
        own = new ShopsOwn(counter);
    }

    /** A sum in the list. */
    public record Entry(String title, String purpose, String address) {}

    /** The list. */
    public record Index(Frame frame, List<Entry> entries) {}

    /**
     * A field of the form.
     *
     * @param fallback what is taken when it is left out, empty where nothing is
     * @param value what was written
     * @param refusal what is said beside it, empty where nothing is
     */
    public record FieldFace(
            String name, String label, String hint, boolean required, String fallback, String value, String refusal) {}

    /**
     * An example to try.
     *
     * @param worked its answer; empty in the list beside the form
     */
    public record Shown(String about, String address, Optional<AnswerFace> worked) {}

    /**
     * The page of a sum.
     *
     * @param unit of bare numbers, as asked
     * @param refusal what is said where it belongs to no field
     * @param answer empty before anything is asked, or when it was refused
     */
    public record Sheet(
            Frame frame,
            String name,
            String title,
            String purpose,
            List<FieldFace> fields,
            String unit,
            String refusal,
            Optional<AnswerFace> answer,
            List<Shown> examples) {}

    /** A sum in the reference. */
    public record Chapter(String name, String title, String purpose, List<Field<?>> fields, List<Shown> examples) {}

    /** The reference. */
    public record Reference(Frame frame, List<Chapter> chapters) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/sums", context -> views.show(context, "sums", index()));
        routes.get("/sums/reference", context -> views.show(context, "reference", reference()));
        routes.get("/sums/{sum}", this::show);
    }

    private Index index() {
        return new Index(
                counter.frame("Sums", Section.SUMS),
                counter.sums().list().stream()
                        .map(sum -> new Entry(sum.title(), sum.purpose(), "/sums/" + sum.name()))
                        .toList());
    }

    private void show(Context context) {
        Sum sum = sum(counter, context);
        Map<String, String> written = written(context, sum);
        boolean asked = sum.fields().stream().anyMatch(field -> written.containsKey(field.name()));
        own.fill(sum, written);
        if (!asked) {
            views.show(context, "sum", sheet(sum, written, Optional.empty()));
            return;
        }
        Outcome outcome = Asking.ask(sum, written, counter.unit());
        Sheet sheet = sheet(sum, written, Optional.of(outcome));
        switch (outcome) {
            case Outcome.Answered answered -> views.show(context, "sum", sheet);
            case Outcome.Refused refused -> views.showRefused(context, "sum", sheet);
        }
    }

    /** The sum that an address names. */
    static Sum sum(Counter counter, Context context) {
        String name = context.pathParam("sum");
        return counter.sums()
                .find(name)
                .orElseThrow(() -> new NotFoundResponse("There is no sum called '" + name + "'."));
    }

    private static Map<String, String> written(Context context, Sum sum) {
        var written = new LinkedHashMap<String, String>();
        context.queryParamMap().forEach((name, given) -> {
            boolean known = name.equals(Asking.UNIT)
                    || sum.fields().stream().anyMatch(field -> field.name().equals(name));
            if (known && !given.isEmpty()) {
                written.put(name, given.getFirst());
            }
        });
        return written;
    }

    private LengthUnit unit(Map<String, String> written) {
        return switch (written.getOrDefault(Asking.UNIT, "").strip()) {
            case "mm" -> LengthUnit.MILLIMETRE;
            case "in" -> LengthUnit.INCH;
            default -> counter.unit();
        };
    }

    private Sheet sheet(Sum sum, Map<String, String> written, Optional<Outcome> outcome) {
        LengthUnit unit = unit(written);
        Optional<Outcome.Refused> refused =
                outcome.filter(Outcome.Refused.class::isInstance).map(Outcome.Refused.class::cast);
        List<FieldFace> fields = sum.fields().stream()
                .map(field -> face(field, written, refused))
                .toList();
        boolean beside = fields.stream().anyMatch(field -> !field.refusal().isEmpty());
        return new Sheet(
                counter.frame(sum.title(), Section.SUMS),
                sum.name(),
                sum.title(),
                sum.purpose(),
                fields,
                unit.symbol(),
                beside ? "" : refused.map(Outcome.Refused::say).orElse(""),
                outcome.filter(Outcome.Answered.class::isInstance)
                        .map(Outcome.Answered.class::cast)
                        .map(answered -> AnswerFace.of(answered, unit)),
                sum.examples().stream().map(example -> shown(sum, example)).toList());
    }

    private static FieldFace face(Field<?> field, Map<String, String> written, Optional<Outcome.Refused> refused) {
        String fallback = field.fallback();
        return new FieldFace(
                field.name(),
                field.label(),
                field.hint(),
                field.required(),
                fallback == null ? "" : fallback,
                written.getOrDefault(field.name(), ""),
                refused.filter(because -> because.field().equals(field.name()))
                        .map(Outcome.Refused::say)
                        .orElse(""));
    }

    private static Shown shown(Sum sum, Example example) {
        return new Shown(example.about(), address(sum, example), Optional.empty());
    }

    private static String address(Sum sum, Example example) {
        return example.ask().entrySet().stream()
                .map(entry -> entry.getKey() + "=" + URLEncoder.encode(entry.getValue(), StandardCharsets.UTF_8))
                .sorted()
                .collect(Collectors.joining("&", "/sums/" + sum.name() + "?", ""));
    }

    private Reference reference() {
        return new Reference(
                counter.frame("Reference of the sums", Section.SUMS),
                counter.sums().list().stream().map(this::chapter).toList());
    }

    private Chapter chapter(Sum sum) {
        return new Chapter(
                sum.name(),
                sum.title(),
                sum.purpose(),
                sum.fields(),
                sum.examples().stream().map(example -> worked(sum, example)).toList());
    }

    private Shown worked(Sum sum, Example example) {
        Optional<AnswerFace> face = Asking.ask(sum, example.ask(), counter.unit()) instanceof Outcome.Answered answered
                ? Optional.of(AnswerFace.of(answered, unit(example.ask())))
                : Optional.empty();
        return new Shown(example.about(), address(sum, example), face);
    }
}
