package chargehand.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a command is called and what it takes.
 *
 * @param name the word it is asked by
 * @param form what follows the name, such as {@code NAME FIELD=VALUE …}
 * @param about what it does: the first line stands in the list of commands, further lines only in its own help
 * @param options all but {@code --help}, which every command has
 */
public record Usage(String name, String form, List<String> about, List<Option> options) {
    public Usage {
        about = List.copyOf(about);
        options = Stream.concat(options.stream(), Stream.of(Option.HELP))
                .distinct()
                .toList();
    }

    /** How it is asked: {@code ./chargehand sum}. */
    String asked() {
        return name.isEmpty() ? "./chargehand" : "./chargehand " + name;
    }

    Optional<Option> find(String option) {
        return options.stream().filter(each -> each.name().equals(option)).findFirst();
    }

    /** All options in a row, as they are written. */
    String optionsInWords() {
        return options.stream().map(Option::written).collect(Collectors.joining(", "));
    }

    /** The help of this command. */
    String text() {
        var page = new TextPage();
        page.line((asked() + " " + form).stripTrailing());
        page.line("");
        about.forEach(page::line);
        page.line("");
        page.rows(options.stream()
                .map(option -> List.of(option.written(), option.say()))
                .toList());
        return page.text();
    }
}
