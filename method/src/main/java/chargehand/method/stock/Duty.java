package chargehand.method.stock;

import java.util.List;
import java.util.regex.Pattern;

/** What a part must bear, as far as it decides what it may be made from. */
enum Duty {
    /** Nothing was said. */
    NONE(""),
    /** Something was said that is neither of the others. */
    ORDINARY("this duty"),
    /** Water, oil or air under pressure. */
    PRESSURE("pressure"),
    /** Lifting or holding a load over people. */
    LIFTING("lifting"),
    /** Steam or hot water under pressure. */
    STEAM("steam");

    private static final Pattern STEAM_WORDS =
            Pattern.compile("(?i)\\b(steam|boiler|superheat\\w*|hot water|feed ?water)");
    private static final Pattern LIFTING_WORDS =
            Pattern.compile("(?i)\\b(lift\\w*|hoist\\w*|crane|sling\\w*|shackle|hook|winch|suspend\\w*)");
    private static final Pattern PRESSURE_WORDS =
            Pattern.compile("(?i)(\\b(pressure|hydraulic|pneumatic|compressed)|\\d\\s*(psi|bar|MPa|kPa|lb/in)\\b)");
    private static final List<Duty> CAREFUL = List.of(PRESSURE, LIFTING, STEAM);

    private final String words;

    Duty(String words) {
        this.words = words;
    }

    /** The duty that the asker's words mean; steam before lifting before pressure where several are named. */
    static Duty of(String written) {
        if (written.isBlank()) {
            return NONE;
        }
        if (STEAM_WORDS.matcher(written).find()) {
            return STEAM;
        }
        if (LIFTING_WORDS.matcher(written).find()) {
            return LIFTING;
        }
        return PRESSURE_WORDS.matcher(written).find() ? PRESSURE : ORDINARY;
    }

    /** Whether only a material that is known will do. */
    boolean isCareful() {
        return CAREFUL.contains(this);
    }

    /** The duty for a person, to stand after "for". */
    String words() {
        return words;
    }
}
