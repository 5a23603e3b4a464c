package chargehand.measure;

/** The sentences by which every notation refuses: what was found, and what would do. */
final class Plainly {
    private static final String VOWELS = "aeiou";

    private Plainly() {}

    /** The kind with its article: {@code a force}, {@code an angle}. */
    static String a(String name) {
        return (VOWELS.indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }

    static Unreadable isNot(Tokens tokens, Notation<?> notation) {
        return new Unreadable(tokens.quoted() + " is not " + a(notation.name()) + write(notation));
    }

    /** A number that needs a unit has none, or one that is not known. */
    static Unreadable noUnit(Tokens tokens, Notation<?> notation) {
        return tokens.atEnd() ? needsUnit(tokens, notation) : leftOver(tokens, notation);
    }

    static Unreadable needsUnit(Tokens tokens, Notation<?> notation) {
        return new Unreadable(tokens.quoted() + " needs its unit to be " + a(notation.name()) + write(notation));
    }

    static Unreadable unknownUnit(Tokens tokens, String found, String known, Notation<?> notation) {
        return new Unreadable(tokens.quoted() + " has " + Tokens.quoted(found)
                + " after the number, which is no unit of " + notation.name() + " here: " + known + " are.");
    }

    /** Something that does not belong stands behind. */
    static Unreadable leftOver(Tokens tokens, Notation<?> notation) {
        return new Unreadable(tokens.quoted() + " has " + Tokens.quoted(tokens.rest()) + " after what reads as "
                + a(notation.name()) + write(notation));
    }

    static Unreadable tooLarge(Tokens tokens, Notation<?> notation, IllegalArgumentException cause) {
        String say =
                tokens.quoted() + " is far too much for " + a(notation.name()) + ": check the figure and its unit.";
        return new Unreadable(say, cause);
    }

    /** Refuses anything not yet read. */
    static void end(Tokens tokens, Notation<?> notation) {
        if (!tokens.atEnd()) {
            throw leftOver(tokens, notation);
        }
    }

    private static String write(Notation<?> notation) {
        return ": write " + notation.examples() + ".";
    }
}
