package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A thread as drawings call for it, which may bring its class of fit: {@code M12-6g}, {@code 1/2-13 UNC-2A}, {@code G 3/8 B},
 * {@code 1/2 BSW medium}.
 *
 * @param thread the thread
 * @param fit the class it was called with, empty when none was
 */
public record CalledThread(ScrewThread thread, String fit) {
    private static final Pattern WITH_CLASS = Pattern.compile("(.+?)[ -]+([0-9A-Za-z/]+)");

    /**
     * Reads a designation with or without a class.
     *
     * @throws Unreadable as {@link ScrewThread#parse} does, when what is left without its last word is no thread either
     */
    public static CalledThread parse(String written) {
        try {
            return new CalledThread(ScrewThread.parse(written), "");
        } catch (Unreadable notAThread) {
            return findWithClass(written).orElseThrow(() -> notAThread);
        }
    }

    private static Optional<CalledThread> findWithClass(String written) {
        Matcher parts = WITH_CLASS.matcher(written.strip());
        return parts.matches() ? find(parts.group(1), parts.group(2)) : Optional.empty();
    }

    private static Optional<CalledThread> find(String designation, String fit) {
        try {
            ScrewThread thread = ScrewThread.parse(designation);
            return ThreadLimits.find(thread, fit).map(limits -> new CalledThread(thread, fit));
        } catch (Unreadable neither) {
            return Optional.empty();
        }
    }
}
