package chargehand.web.serving;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What a person sees when something is not there or went wrong: plain words, and a number to find it in the log by. */
public final class FaultPages implements Pages {
    private static final Logger LOG = LoggerFactory.getLogger(FaultPages.class);

    private final Views views;

    public FaultPages(Views views) {
        this.views = views;
    }

    /**
     * A fault as it is shown.
     *
     * @param title a few words
     * @param say what happened and what would do
     * @param id to find it in the log, empty where there is nothing to find
     */
    public record Fault(Frame frame, String title, String say, String id) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, this::known);
        routes.exception(Exception.class, this::unknown);
        routes.error(HttpStatus.NOT_FOUND.getCode(), this::notFound);
    }

    private void known(HttpResponseException refused, Context context) {
        String message = refused.getMessage();
        context.status(refused.getStatus());
        show(context, new Fault(frame(), title(refused.getStatus()), message == null ? "" : message, ""));
    }

    private static String title(int status) {
        return status == HttpStatus.NOT_FOUND.getCode() ? "Not here" : "Not done";
    }

    private void unknown(Exception fault, Context context) {
        String id = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} at {}", id, context.path(), fault);
        context.status(HttpStatus.INTERNAL_SERVER_ERROR);
        show(
                context,
                new Fault(
                        frame(),
                        "Something broke",
                        "The program failed at this. What was in the book before is still there; what you were doing may"
                                + " have to be done again.",
                        id));
    }

    private void notFound(Context context) {
        if (context.result() == null || context.result().isBlank()) {
            show(context, new Fault(frame(), "Not here", "There is no page at " + context.path() + ".", ""));
        }
    }

    private static Frame frame() {
        return new Frame("Chargehand", "Not here", Frame.Section.NONE);
    }

    private void show(Context context, Fault fault) {
        context.html(views.fill("fault", fault));
    }
}
