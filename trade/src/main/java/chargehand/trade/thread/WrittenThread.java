package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A designation as typed, with its hand and starts taken off and the rest in one spelling: capitals, {@code X} for every
 * times sign, plain fractions, single spaces.
 *
 * @param typed as typed, for saying back
 * @param body what is left
 * @param starts how many starts were asked for by word, 1 when none
 * @param leftHand whether left hand was asked for
 */
record WrittenThread(String typed, String body, int starts, boolean leftHand) {
    private static final int MOST_CHARACTERS = 60;
    private static final String VULGAR = "½¼¾⅛⅜⅝⅞";
    private static final String[] PLAIN = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"};
    private static final Pattern HAND = Pattern.compile(
            "[ ,;-]*\\b(?:(L)\\.? ?H\\b\\.?|(LEFT)[ -]?HAND(?:ED)?|R\\.? ?H\\b\\.?|RIGHT[ -]?HAND(?:ED)?)");
    private static final Pattern STARTS =
            Pattern.compile("[ ,;-]*\\b(?:(\\d{1,2})|(SINGLE)|(DOUBLE|TWO)|(TRIPLE|THREE))[ -]?STARTS?\\b");

    static WrittenThread of(String typed) {
        if (typed.isBlank() || typed.length() > MOST_CHARACTERS) {
            throw new Unreadable(ThreadReader.WOULD_DO);
        }
        String body = plain(typed.strip());
        boolean left = false;
        Matcher hand = HAND.matcher(body);
        if (hand.find()) {
            left = hand.group(1) != null || hand.group(2) != null;
            body = without(body, hand);
        }
        int starts = 1;
        Matcher many = STARTS.matcher(body);
        if (many.find()) {
            starts = starts(many);
            body = without(body, many);
        }
        return new WrittenThread(typed.strip(), body, starts, left);
    }

    private static String plain(String typed) {
        String text = typed.toUpperCase(Locale.ROOT);
        for (int i = 0; i < PLAIN.length; i++) {
            text = text.replaceAll("(?<=\\d)" + VULGAR.charAt(i), " " + PLAIN[i])
                    .replace(VULGAR.substring(i, i + 1), PLAIN[i]);
        }
        return text.replaceAll("[×*]", "X")
                .replaceAll("(?<=\\d),(?=\\d)", ".")
                .replaceAll("[‐‑–—−]", "-")
                .replaceAll("[\"″”]|''", "")
                .replaceAll("(?<=\\d) ?(?:INCH|IN)\\b\\.?", "")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static String without(String text, Matcher found) {
        return (text.substring(0, found.start()) + " " + text.substring(found.end()))
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static int starts(Matcher many) {
        if (many.group(1) != null) {
            return Integer.parseInt(many.group(1));
        }
        if (many.group(2) != null) {
            return 1;
        }
        return many.group(3) != null ? 2 : 3;
    }
}
