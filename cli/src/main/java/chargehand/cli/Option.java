package chargehand.cli;

/**
 * Something a command line may say beside its words.
 *
 * @param name with its two hyphens
 * @param value what stands for its value in the help; empty for one that has none
 * @param say what it does, a sentence
 * @param repeats whether it may be given more than once
 */
public record Option(String name, String value, String say, boolean repeats) {
    /** Asks what a command takes; every command has it. */
    static final Option HELP = flag("--help", "Say what this takes.");

    public Option {
        if (!name.startsWith("--")) {
            throw new IllegalArgumentException("an option is written --like-this, not " + name);
        }
    }

    /** One that is either there or not. */
    public static Option flag(String name, String say) {
        return new Option(name, "", say, false);
    }

    /** One that is followed by a value. */
    public static Option valued(String name, String value, String say) {
        return new Option(name, value, say, false);
    }

    /** One that is followed by a value and may be given more than once. */
    public static Option repeated(String name, String value, String say) {
        return new Option(name, value, say, true);
    }

    boolean takesValue() {
        return !value.isEmpty();
    }

    /** As it is written: {@code --unit UNIT}. */
    String written() {
        return takesValue() ? name + " " + value : name;
    }
}
