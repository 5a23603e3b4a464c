package chargehand.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Something written, cut into {@link Token}s and read from left to right. This is the one lexer beneath every reader of
 * sizes, units and designations; it takes any text at all and refuses only what is empty or far too long.
 */
public final class Tokens {
    private static final int MOST_CHARACTERS = 200;
    private static final int MOST_QUOTED = 60;
    private static final Pattern CODES = Pattern.compile("[\\p{Cntrl}\\p{Cs}]");
    private static final Pattern ODD_SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private final String written;
    private final List<Token> tokens;
    private int at;

    private Tokens(String written, List<Token> tokens) {
        this.written = written;
        this.tokens = tokens;
    }

    /**
     * Cuts {@code text} into tokens.
     *
     * @param what what is being read, such as "a length", for the sentence when nothing is written
     * @throws Unreadable when nothing is written or it is longer than anything that can be meant
     */
    public static Tokens of(String text, String what) {
        if (text.length() > MOST_CHARACTERS) {
            throw new Unreadable(quoted(text) + " is longer than " + what + " ever is.");
        }
        String written = ODD_SPACES.matcher(text).replaceAll(" ").strip();
        List<Token> tokens = new Lexer(Spelling.plain(written)).tokens();
        if (tokens.isEmpty()) {
            throw new Unreadable("Nothing is written here: " + what + " is needed.");
        }
        return new Tokens(written, tokens);
    }

    /** The whole text in quotation marks, cut short if long, for a sentence about it. */
    public String quoted() {
        return quoted(written);
    }

    static String quoted(String text) {
        String whole = text.strip();
        String shown = whole.length() > MOST_QUOTED ? whole.substring(0, MOST_QUOTED) + "…" : whole;
        return "'" + CODES.matcher(shown).replaceAll("?") + "'";
    }

    /** The text as written, trimmed and with single plain spaces. */
    public String written() {
        return written;
    }

    public boolean atEnd() {
        return at >= tokens.size();
    }

    /** The token so many places ahead, 0 for the next one, if there is one. */
    public Optional<Token> ahead(int places) {
        int index = at + places;
        return index >= 0 && index < tokens.size() ? Optional.of(tokens.get(index)) : Optional.empty();
    }

    /** The next token, if there is one; it stays to be read. */
    public Optional<Token> peek() {
        return ahead(0);
    }

    /** Reads past so many tokens. */
    public void skip(int places) {
        at = Math.min(at + places, tokens.size());
    }

    /** Reads the sign if it comes next. */
    public boolean take(char sign) {
        boolean found = peek().filter(token -> token.isSign(sign)).isPresent();
        skip(found ? 1 : 0);
        return found;
    }

    /** Reads the word if it comes next, in capitals or not. */
    public boolean take(String word) {
        boolean found = peek().filter(token -> token.isWord(word)).isPresent();
        skip(found ? 1 : 0);
        return found;
    }

    /** Everything not yet read, with single spaces where there were any, for a sentence about it. */
    public String rest() {
        var rest = new StringBuilder();
        for (Token token : tokens.subList(at, tokens.size())) {
            rest.append(token.gap() && !rest.isEmpty() ? " " : "").append(token.text());
        }
        return rest.toString();
    }

    /** Cuts plain text; kept apart so that a reader never sees a half-cut text. */
    private static final class Lexer {
        private final String text;
        private final List<Token> found = new ArrayList<>();
        private int from;

        Lexer(String text) {
            this.text = text;
        }

        List<Token> tokens() {
            boolean gap = false;
            while (from < text.length()) {
                if (text.charAt(from) == ' ') {
                    gap = true;
                    from++;
                } else {
                    found.add(next(gap));
                    gap = false;
                }
            }
            return List.copyOf(found);
        }

        private Token next(boolean gap) {
            if (startsNumber(from)) {
                return token(Token.Sort.NUMBER, numberEnd(), gap);
            }
            if (Character.isLetter(text.charAt(from))) {
                Token word = token(Token.Sort.WORD, wordEnd(), gap);
                from += isFullStop(from) ? 1 : 0;
                return word;
            }
            return token(Token.Sort.SIGN, from + 1, gap);
        }

        private Token token(Token.Sort sort, int end, boolean gap) {
            var token = new Token(sort, text.substring(from, end), gap);
            from = end;
            return token;
        }

        /** The point of an abbreviation such as {@code in.}, which says nothing. */
        private boolean isFullStop(int index) {
            return index < text.length() && text.charAt(index) == '.' && !isFigure(index + 1);
        }

        private boolean startsNumber(int index) {
            return isFigure(index) || (isMark(index) && isFigure(index + 1));
        }

        private int numberEnd() {
            int end = from;
            while (startsNumber(end)) {
                end++;
            }
            return end;
        }

        private int wordEnd() {
            int end = from;
            while (end < text.length() && Character.isLetter(text.charAt(end))) {
                end++;
            }
            return end;
        }

        private boolean isMark(int index) {
            return index < text.length() && (text.charAt(index) == '.' || text.charAt(index) == ',');
        }

        private boolean isFigure(int index) {
            return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
        }
    }
}
