package chargehand.cli;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A command line as read: its words in order, and its options. */
public final class Given {
    private final Usage usage;
    private final List<String> words = new ArrayList<>();
    private final Map<String, List<String>> options = new LinkedHashMap<>();

    private Given(Usage usage) {
        this.usage = usage;
    }

    /**
     * Reads what follows a command's name: {@code --flag}, {@code --option value}, {@code --option=value}, words, and after
     * {@code --} nothing but words.
     *
     * @throws AskedWrongly naming what it does not take, and what it does
     */
    static Given read(Usage usage, List<String> args) {
        var given = new Given(usage);
        Iterator<String> rest = args.iterator();
        while (rest.hasNext()) {
            String arg = rest.next();
            if (arg.equals("--")) {
                rest.forEachRemaining(given.words::add);
            } else if (arg.startsWith("-") && arg.length() > 1) {
                given.option(arg, rest);
            } else {
                given.words.add(arg);
            }
        }
        return given;
    }

    private void option(String arg, Iterator<String> rest) {
        int equals = arg.indexOf('=');
        String name = equals < 0 ? arg : arg.substring(0, equals);
        Option option = usage.find(name)
                .orElseThrow(() -> new AskedWrongly("'" + name + "' is not something that " + usage.asked()
                        + " takes. It takes " + usage.optionsInWords() + "."));
        if (!option.takesValue() && equals >= 0) {
            throw new AskedWrongly(name + " takes no value.");
        }
        if (option.takesValue() && equals < 0 && !rest.hasNext()) {
            throw new AskedWrongly(name + " needs its value: " + option.written() + ".");
        }
        String value = !option.takesValue() ? "" : equals < 0 ? rest.next() : arg.substring(equals + 1);
        List<String> values = options.computeIfAbsent(name, first -> new ArrayList<>());
        if (!values.isEmpty() && !option.repeats()) {
            throw new AskedWrongly(name + " may be given once only.");
        }
        values.add(value);
    }

    /** Whether the option stands there. */
    public boolean has(String option) {
        return options.containsKey(declared(option));
    }

    /** The option's value, where it stands there. */
    public Optional<String> find(String option) {
        return all(option).stream().findFirst();
    }

    /** The values of an option that may be given more than once, in order. */
    public List<String> all(String option) {
        return List.copyOf(options.getOrDefault(declared(option), List.of()));
    }

    /** The words that are no options, in order. */
    public List<String> words() {
        return List.copyOf(words);
    }

    /**
     * The only word.
     *
     * @param called what the help calls it
     * @throws AskedWrongly when there is none or more than one
     */
    public String onlyWord(String called) {
        if (words.size() != 1) {
            throw new AskedWrongly(usage.asked() + " needs one " + called + ": " + usage.asked() + " " + usage.form());
        }
        return words.getFirst();
    }

    /**
     * Refuses words where a command takes none.
     *
     * @throws AskedWrongly naming the first
     */
    public void noWords() {
        if (!words.isEmpty()) {
            throw new AskedWrongly("'" + words.getFirst() + "' is not something that " + usage.asked()
                    + " takes. It takes " + usage.optionsInWords() + ".");
        }
    }

    private String declared(String option) {
        return usage.find(option)
                .orElseThrow(() -> new IllegalArgumentException(usage.asked() + " declares no " + option))
                .name();
    }
}
