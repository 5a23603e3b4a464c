package chargehand.part.yaml.tree;

import java.util.Locale;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says in plain words what a YAML reader found wrong with the layout of a text. */
final class Layout {
    private Layout() {}

    static void refuse(YamlEngineException exception, String text, Faults faults) {
        switch (exception) {
            case MarkedYamlEngineException marked ->
                faults.add(
                        marked.getProblemMark()
                                .map(mark -> YamlTree.place(mark, ""))
                                .orElse(Place.START),
                        ReadingFault.LAYOUT,
                        say(marked));
            case ReaderException reader ->
                faults.add(
                        place(text, reader.getPosition()),
                        ReadingFault.LAYOUT,
                        String.format(
                                Locale.ROOT,
                                "A character that no text holds stands here (U+%04X): take it out.",
                                reader.getCodePoint()));
            default -> faults.add(Place.START, ReadingFault.LAYOUT, "This file cannot be read as YAML.");
        }
    }

    private static String say(MarkedYamlEngineException exception) {
        String problem = String.valueOf(exception.getProblem());
        if (problem.contains("TAB")) {
            return "A tab stands here: lines are moved in with spaces.";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "A colon stands here where no key can: put a text that holds a colon and a space in quotes.";
        }
        if (problem.contains("expected <block end>") || problem.contains("block sequence entries")) {
            return "This line is moved in differently from those it belongs with.";
        }
        if (problem.contains("could not find expected ':'")) {
            return "A key without a colon stands above here: write key, colon, space, value.";
        }
        if (problem.contains("cannot start any token")) {
            return "No value begins with this sign: put the value in quotes.";
        }
        if (problem.contains("unexpected end of stream") || problem.contains("document separator")) {
            return "A quote is opened above here and never closed.";
        }
        if (problem.contains("expected ',' or")) {
            return "A bracket or brace is opened above here and not closed, or a comma is missing.";
        }
        return "This line is not laid out as YAML.";
    }

    private static Place place(String text, int position) {
        String before = text.substring(0, Math.min(position, text.length()));
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new Place("", line, before.length() - before.lastIndexOf('\n'));
    }
}
