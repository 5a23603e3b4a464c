package chargehand.web.serving;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Keeps other sites out. Until people sign in the server is for this machine only, so it answers only to this machine's own
 * names; and a change is taken only from its own pages: browsers say where a post comes from in {@code Sec-Fetch-Site} or
 * {@code Origin}, which no page of another site can forge.
 */
public final class Guard {
    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final Set<String> OWN_SITES = Set.of("same-origin", "none");
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final String JSON = "application/json";

    /** What a page may load: nothing from anywhere else, and no script that is not a file of ours. */
    private static final String POLICY = "default-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline';"
            + " img-src 'self' data:; frame-ancestors 'none'; form-action 'self'; base-uri 'none'; object-src 'none'";

    private Guard() {}

    /** Looks at a request before any page sees it. */
    public static void check(Context context) {
        harden(context);
        if (!OWN_NAMES.contains(name(context.host()))) {
            throw new ForbiddenResponse("This shop's book answers on this machine only, at 127.0.0.1 or localhost.");
        }
        if (changes(context) && !isOwn(context)) {
            throw new ForbiddenResponse("This did not come from one of the book's own pages, so nothing was changed.");
        }
    }

    private static void harden(Context context) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
    }

    private static boolean changes(Context context) {
        return !READING.contains(context.method().name());
    }

    /** A JSON body cannot be sent by a form of another site; everything else must say where it comes from. */
    private static boolean isOwn(Context context) {
        String site = context.header("Sec-Fetch-Site");
        if (site != null) {
            return OWN_SITES.contains(site);
        }
        String origin = context.header("Origin");
        if (origin != null) {
            return origin.equals("http://" + context.host());
        }
        String type = context.contentType();
        return type != null && type.startsWith(JSON);
    }

    /** The host without its port; nothing where none is given or none can be read. */
    private static String name(@Nullable String host) {
        try {
            return Optional.ofNullable(host)
                    .map(given -> URI.create("http://" + given).getHost())
                    .orElse("");
        } catch (IllegalArgumentException garbled) {
            return "";
        }
    }
}
