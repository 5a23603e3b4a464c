package chargehand.web.serving;

import chargehand.drawing.lettering.Weight;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;

/** The style sheet, the few scripts and the font, all from within the program. */
public final class Looks implements Pages {
    private static final String KEEP = "private, max-age=3600";
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.7/dist/htmx.min.js";
    private static final String OWN = "/chargehand/web/look/";

    private static final Map<String, Look> FILES = Map.of(
            "look.css", new Look(OWN + "look.css", "text/css; charset=utf-8"),
            "page.js", new Look(OWN + "page.js", "text/javascript; charset=utf-8"),
            "htmx.js", new Look(HTMX, "text/javascript; charset=utf-8"));

    private record Look(String resource, String type) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/look/{file}", Looks::file);
        routes.get("/look/font/{file}", Looks::font);
        routes.get("/favicon.ico", context -> context.status(204));
    }

    private static void file(Context context) {
        Look look = FILES.get(context.pathParam("file"));
        if (look == null) {
            throw new NotFoundResponse("There is no such file.");
        }
        answer(context, look.type(), bytes(look.resource()));
    }

    private static void font(Context context) {
        Weight weight = Arrays.stream(Weight.values())
                .filter(each -> each.file().equals(context.pathParam("file")))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("There is no such font."));
        try (InputStream font = weight.open()) {
            answer(context, "font/ttf", font.readAllBytes());
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static void answer(Context context, String type, byte[] bytes) {
        context.header("Cache-Control", KEEP);
        context.contentType(type);
        context.result(bytes);
    }

    private static byte[] bytes(String resource) {
        try (InputStream file = Looks.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IOException(resource + " is missing from the program");
            }
            return file.readAllBytes();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
