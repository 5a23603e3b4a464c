package chargehand.web.sum;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.FigureText;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An answer as it is shown, everything in both units, the shop's own first.
 *
 * @param taken how what was written was understood
 * @param figures the answers, in the order of the sum
 * @param working every step, to be followed with a pencil
 * @param cautions to be said beside the figures
 */
public record AnswerFace(List<Taken> taken, List<Line> figures, List<Step> working, List<String> cautions) {
    /** A field and how it was understood. */
    public record Taken(String label, String say) {}

    /**
     * One answer.
     *
     * @param text the figure, empty where it takes a table
     * @param head what stands over the columns, none where it takes no table
     */
    public record Line(String label, String text, List<String> head, List<List<String>> rows) {
        static Line of(String label, String text) {
            return new Line(label, text, List.of(), List.of());
        }
    }

    /** The face of an answer, with lengths in {@code first} first. */
    public static AnswerFace of(Outcome.Answered answered, LengthUnit first) {
        Sum sum = answered.sum();
        List<Taken> taken = answered.taken().entrySet().stream()
                .map(entry -> new Taken(label(sum, entry.getKey()), entry.getValue()))
                .toList();
        List<Line> lines = sum.results().stream()
                .map(result -> line(result, answered.answer().figures(), first))
                .flatMap(Optional::stream)
                .toList();
        return new AnswerFace(taken, lines, answered.working(), answered.cautions());
    }

    private static String label(Sum sum, String name) {
        return sum.fields().stream()
                .filter(field -> field.name().equals(name))
                .map(Field::label)
                .findFirst()
                .orElse(name);
    }

    private static Optional<Line> line(Result result, Map<String, Figure> figures, LengthUnit first) {
        FigureText text = new FigureText(first, result.fine());
        return Optional.ofNullable(figures.get(result.name())).map(figure -> line(result.label(), figure, text));
    }

    private static Line line(String label, Figure figure, FigureText text) {
        return switch (figure) {
            case Figure.Many(var entries)
            when isAllGroups(entries) ->
                table(label, entries.stream().map(Figure.Group.class::cast).toList(), text);
            case Figure.Group(var entries)
            when isAllGroups(List.copyOf(entries.values())) -> named(label, entries, text);
            default -> Line.of(label, text.of(figure));
        };
    }

    private static boolean isAllGroups(List<Figure> figures) {
        return !figures.isEmpty() && figures.stream().allMatch(Figure.Group.class::isInstance);
    }

    private static Line table(String label, List<Figure.Group> groups, FigureText text) {
        List<String> keys = keys(groups);
        return new Line(
                label,
                "",
                keys.stream().map(FigureText::words).toList(),
                groups.stream().map(group -> cells(group, keys, text)).toList());
    }

    private static Line named(String label, Map<String, Figure> entries, FigureText text) {
        List<Figure.Group> groups =
                entries.values().stream().map(Figure.Group.class::cast).toList();
        List<String> keys = keys(groups);
        var head = new ArrayList<>(List.of(""));
        keys.stream().map(FigureText::words).forEach(head::add);
        var rows = new ArrayList<List<String>>();
        entries.forEach((name, entry) -> {
            var row = new ArrayList<>(List.of(FigureText.words(name)));
            row.addAll(cells((Figure.Group) entry, keys, text));
            rows.add(row);
        });
        return new Line(label, "", head, rows);
    }

    private static List<String> keys(List<Figure.Group> groups) {
        return groups.stream()
                .flatMap(group -> group.figures().keySet().stream())
                .distinct()
                .collect(Collectors.toList());
    }

    private static List<String> cells(Figure.Group group, List<String> keys, FigureText text) {
        return keys.stream()
                .map(key -> Optional.ofNullable(group.figures().get(key))
                        .map(text::of)
                        .orElse(""))
                .toList();
    }
}
