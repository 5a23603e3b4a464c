package chargehand.measure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a length as the trade writes it: {@code 1 3/8}, {@code 1-3/8 in}, {@code .8125"}, {@code 13/16}, {@code ⅜},
 * {@code 5 thou}, {@code 20.6 mm}, {@code 20,6}, {@code 25 µm}, {@code 1.5 m}, {@code 2 ft 3 1/2 in}, {@code +.002},
 * {@code 10 - 1/64} and, in the old wording, {@code 10 less 1/64}.
 *
 * <p>What is taken for granted:
 *
 * <ul>
 *   <li>A vulgar fraction without a unit is always inches: nobody writes millimetres so. {@code 1/2 mm} is half a
 *       millimetre.
 *   <li>Any other bare number is in the unit given. In a sum of two numbers it takes the unit of its neighbour first.
 *   <li>A comma is a decimal comma; {@code 1,500} could mean two things and is refused ({@link Numeral}).
 *   <li>A dash that touches the figures on both sides joins a fraction to its whole number ({@code 1-3/8}); with a space
 *       on both sides it takes away. One-sided spaces are refused.
 *   <li>A leading {@code Ø} says nothing about the size and is passed over.
 * </ul>
 *
 * <p>Every length is exact to the nanometre; finer is rounded, halves away from zero. 64ths, tenths of a thou and
 * micrometres are whole nanometres.
 */
public final class LengthReader {
    private static final String WHAT = "a length";
    static final String EXAMPLES = "20.6 mm, 1 3/8 in, .8125 in or 5 thou";

    private LengthReader() {}

    /**
     * Reads a length.
     *
     * @param text what a person wrote
     * @param bareUnit the unit of a bare number
     * @throws Unreadable saying what was found and what would do
     */
    public static Written read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, WHAT);
        tokens.take("Ø");
        List<LengthTerm> terms = settled(terms(tokens));
        if (!tokens.atEnd()) {
            throw left(tokens);
        }
        Length length = sum(tokens, terms, bareUnit);
        return new Written(tokens.written(), length, terms.getFirst().unit(bareUnit));
    }

    private static List<LengthTerm> terms(Tokens tokens) {
        var terms = new ArrayList<LengthTerm>();
        boolean less = SignedNumber.takeMinus(tokens);
        terms.add(signed(less, tokens));
        while (isJoined(tokens)) {
            boolean off = tokens.peek()
                    .filter(token -> token.isSign('-') || token.isWord("less"))
                    .isPresent();
            tokens.skip(1);
            terms.add(signed(off, tokens));
        }
        return terms;
    }

    private static LengthTerm signed(boolean less, Tokens tokens) {
        LengthTerm term = LengthTerm.take(tokens).orElseThrow(() -> noNumber(tokens));
        return less ? term.negated() : term;
    }

    /** Whether a second number follows, joined by a word or by a sign with a space on each side. */
    private static boolean isJoined(Tokens tokens) {
        Optional<Token> joint = tokens.peek();
        if (joint.filter(token -> token.isWord("less") || token.isWord("plus")).isPresent()) {
            return true;
        }
        if (joint.filter(token -> token.isSign('-') || token.isSign('+')).isEmpty()
                || tokens.ahead(1).isEmpty()) {
            return false;
        }
        boolean spaced = joint.get().gap() && tokens.ahead(1).filter(Token::gap).isPresent();
        if (!spaced) {
            throw new Unreadable(tokens.quoted() + " could be one size or two: write 1-3/8 for one and three eighths,"
                    + " or 10 - 1/64, with a space on each side, for ten less a sixty-fourth.");
        }
        return true;
    }

    /** Gives each bare number the unit of the next number that has one, or else of the one before. */
    private static List<LengthTerm> settled(List<LengthTerm> terms) {
        var settled = new ArrayList<>(terms);
        for (int i = settled.size() - 2; i >= 0; i--) {
            settled.set(i, beside(settled.get(i), settled.get(i + 1)));
        }
        for (int i = 1; i < settled.size(); i++) {
            settled.set(i, beside(settled.get(i), settled.get(i - 1)));
        }
        return settled;
    }

    private static LengthTerm beside(LengthTerm term, LengthTerm neighbour) {
        return neighbour.mark().map(mark -> term.orIn(mark.beside())).orElse(term);
    }

    private static Length sum(Tokens tokens, List<LengthTerm> terms, LengthUnit bareUnit) {
        BigInteger nanometres =
                terms.stream().map(term -> term.nanometres(bareUnit)).reduce(BigInteger.ZERO, BigInteger::add);
        return LengthTerm.length(nanometres)
                .orElseThrow(() -> new Unreadable(tokens.quoted() + " is longer than " + Length.MOST_METRES
                        + " m, which is more than a shop handles: check the figure and its unit."));
    }

    private static Unreadable noNumber(Tokens tokens) {
        return new Unreadable(tokens.quoted() + " is not a length: write " + EXAMPLES + ".");
    }

    private static Unreadable left(Tokens tokens) {
        Token next = tokens.peek().orElseThrow();
        String rest = Tokens.quoted(tokens.rest());
        if (next.isWord("x")) {
            return new Unreadable(tokens.quoted() + " is more than one size: write one of them here.");
        }
        if (next.isSign('/')) {
            return new Unreadable(tokens.quoted()
                    + " has a fraction that does not read: write whole numbers above and below, not nought below, as in"
                    + " 13/16.");
        }
        if (next.isWord()) {
            return new Unreadable(tokens.quoted() + " has " + rest
                    + " after the number, which is no unit of length here: " + LengthMark.ALL + " are.");
        }
        return new Unreadable(
                tokens.quoted() + " has " + rest + " left over after the length: write " + EXAMPLES + ".");
    }
}
