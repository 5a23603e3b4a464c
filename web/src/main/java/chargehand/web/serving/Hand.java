package chargehand.web.serving;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Who does what is done on these pages: a name given by the person at this screen, kept by the browser until people sign in. */
public final class Hand {
    private static final String COOKIE = "hand";
    private static final String UNNAMED = "lead hand";
    private static final int LONGEST = 80;
    private static final int A_DAY = 24 * 60 * 60;

    private Hand() {}

    /** Who is at this screen. */
    public static String of(Context context) {
        String kept = context.cookie(COOKIE);
        String name = kept == null ? "" : decoded(kept).strip();
        return name.isEmpty() || name.length() > LONGEST ? UNNAMED : name;
    }

    /** Remembers who is at this screen. */
    public static void remember(Context context, String name) {
        String kept = URLEncoder.encode(name.strip(), StandardCharsets.UTF_8);
        Cookie cookie = new Cookie(COOKIE, kept, "/", A_DAY);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }

    private static String decoded(String kept) {
        try {
            return URLDecoder.decode(kept, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException garbled) {
            return "";
        }
    }
}
