package chargehand.web.serving;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** Fills the templates, which were made into classes at build time. Everything put into them is escaped. */
public final class Views {
    private static final String LEAVES = "chargehand.web.leaf";

    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, Views.class.getClassLoader(), LEAVES);

    /** Answers with a filled template. */
    public void show(Context context, String leaf, Object model) {
        context.html(fill(leaf, model));
    }

    /** Answers with a filled template and says that what was sent could not be taken. */
    public void showRefused(Context context, String leaf, Object model) {
        context.status(HttpStatus.UNPROCESSABLE_CONTENT).html(fill(leaf, model));
    }

    String fill(String leaf, Object model) {
        var output = new StringOutput();
        engine.render(leaf + ".jte", model, output);
        return output.toString();
    }
}
