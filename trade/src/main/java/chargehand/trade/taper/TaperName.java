package chargehand.trade.taper;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a standard taper, read from the several ways it is written.
 *
 * @param series the family
 * @param size its number
 */
record TaperName(Series series, int size) {
    /** The families, each with a pattern of the words it goes by once points, spaces and the like are gone. */
    enum Series {
        MORSE("Morse", "morsetaper|morse|mt|mk"),
        BROWN_AND_SHARPE("Brown & Sharpe", "brownandsharpe|brownsharpe|bands|bs"),
        JARNO("Jarno", "jarnotaper|jarno"),
        JACOBS("Jacobs", "jacobstaper|jacobs|jt"),
        METRIC("Metric", "metrictaper|metric"),
        MILLING("Milling", "millingtaper|milling|724|iso|int|nt|bt|sk");

        private final String title;
        private final String words;

        Series(String title, String words) {
            this.title = title;
            this.words = words;
        }
    }

    private static final int LONGEST = 40;
    private static final Pattern NUMBER_FIRST = Pattern.compile("(\\d{1,3})([a-z]+)");
    private static final Pattern NUMBER_LAST = Pattern.compile("([a-z]+|724)(\\d{1,3})");

    static Optional<TaperName> parse(String written) {
        if (written.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = written.toLowerCase(Locale.ROOT)
                .replaceAll("(\\b(no\\.?|number|size)|#)(?=[\\s\\d])", "")
                .replaceAll("[^a-z0-9]", "");
        Matcher last = NUMBER_LAST.matcher(plain);
        if (last.matches()) {
            return named(last.group(1), last.group(2));
        }
        Matcher first = NUMBER_FIRST.matcher(plain);
        return first.matches() ? named(first.group(2), first.group(1)) : Optional.empty();
    }

    private static Optional<TaperName> named(String word, String number) {
        for (Series series : Series.values()) {
            if (word.matches(series.words)) {
                return Optional.of(new TaperName(series, Integer.parseInt(number)));
            }
        }
        return Optional.empty();
    }

    /** The name as the table has it. */
    @Override
    public String toString() {
        return series.title + " " + size;
    }
}
