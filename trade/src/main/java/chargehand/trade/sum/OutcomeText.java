package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Outcomes as lines of text for a person at a terminal: how the ask was taken, the answer, the working, the cautions. */
public final class OutcomeText {
    private static final String STEP_INDENT = "     ";

    private final LengthUnit first;
    private final List<String> lines = new ArrayList<>();

    private OutcomeText(LengthUnit first) {
        this.first = first;
    }

    /**
     * The lines to show.
     *
     * @param first the unit to show before the other
     */
    public static List<String> lines(Outcome outcome, LengthUnit first) {
        var text = new OutcomeText(first);
        switch (outcome) {
            case Outcome.Answered answered -> text.answered(answered);
            case Outcome.Refused refused -> text.lines.add(refused.field() + ": " + refused.say());
        }
        return List.copyOf(text.lines);
    }

    private void answered(Outcome.Answered answered) {
        lines.add(answered.sum().title());
        answered.taken().forEach((name, taken) -> lines.add("  " + label(answered.sum(), name) + ": " + taken));
        lines.add("");
        for (Result result : answered.sum().results()) {
            answer(result, answered.answer().figures());
        }
        lines.add("");
        int number = 0;
        for (Step step : answered.working()) {
            number++;
            working(number, step);
        }
        answered.cautions().forEach(caution -> lines.add("Take care: " + caution));
    }

    private static String label(Sum sum, String name) {
        return sum.fields().stream()
                .filter(field -> field.name().equals(name))
                .map(Field::label)
                .findFirst()
                .orElse(name);
    }

    private void answer(Result result, Map<String, Figure> figures) {
        Figure figure = figures.get(result.name());
        if (figure == null) {
            return;
        }
        figure(result.label(), figure, new FigureText(first, result.fine()), "");
    }

    /** A group of groups, and a list of groups, take a line for each entry; anything else stands on its own line. */
    private void figure(String label, Figure figure, FigureText text, String indent) {
        switch (figure) {
            case Figure.Group(var entries)
            when entries.values().stream().anyMatch(Figure.Group.class::isInstance) -> {
                lines.add(indent + label + ":");
                entries.forEach((name, entry) -> figure(FigureText.words(name), entry, text, indent + "  "));
            }
            case Figure.Many(var entries)
            when entries.stream().anyMatch(Figure.Group.class::isInstance) -> {
                lines.add(indent + label + ":");
                entries.forEach(entry -> lines.add(indent + "  - " + text.of(entry)));
            }
            default -> lines.add(indent + label + ": " + text.of(figure));
        }
    }

    private void working(int number, Step step) {
        lines.add("  " + number + ". " + step.say());
        if (!step.formula().isEmpty()) {
            lines.add(STEP_INDENT + step.formula());
        }
        if (!step.numbers().isEmpty()) {
            lines.add(STEP_INDENT + "= " + step.numbers());
        }
        String equals = step.formula().isEmpty() ? "" : "= ";
        lines.add(STEP_INDENT + equals + step.result() + "  [" + step.source().text() + "]");
    }
}
