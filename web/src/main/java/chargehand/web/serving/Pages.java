package chargehand.web.serving;

import io.javalin.config.RoutesConfig;

/** A few pages that belong together, and the addresses they answer at. */
public interface Pages {
    void add(RoutesConfig routes);
}
