package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code 2 BA}, also {@code No. 2 BA} and {@code BA 2} (BS 93). */
final class BritishAssociationNotation {
    private static final Pattern NUMBER_FIRST = Pattern.compile("(?:NO\\.? ?|#)?(\\d{1,2}) ?B\\.? ?A\\.?");
    private static final Pattern WORD_FIRST = Pattern.compile("BA ?(?:NO\\.? ?|#)?(\\d{1,2})");

    private BritishAssociationNotation() {}

    static Optional<ScrewThread> find(String body) {
        Matcher numberFirst = NUMBER_FIRST.matcher(body);
        if (numberFirst.matches()) {
            return Optional.of(numbered(Integer.parseInt(numberFirst.group(1))));
        }
        Matcher wordFirst = WORD_FIRST.matcher(body);
        return wordFirst.matches() ? Optional.of(numbered(Integer.parseInt(wordFirst.group(1)))) : Optional.empty();
    }

    private static ScrewThread numbered(int number) {
        if (number > BritishAssociation.LAST_NUMBER) {
            throw new Unreadable("BA threads run from 0 BA to " + BritishAssociation.LAST_NUMBER + " BA here, so "
                    + number + " BA is not one of them.");
        }
        return BritishAssociation.thread(number);
    }
}
