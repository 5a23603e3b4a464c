package chargehand.drawing;

import java.util.Locale;

/** Whether golden files may be written anew: on purpose only, and never by a machine that checks what others wrote. */
public final class Golden {
    private static final String ASKED = "golden.rewrite";
    private static final String CHECKING = "CI";

    private Golden() {}

    /**
     * Whether to rewrite, as {@code -Dgolden.rewrite=true} asks.
     *
     * @throws IllegalStateException where {@code CI=true} says that this machine only checks
     */
    public static boolean mayRewrite() {
        return mayRewrite(Boolean.getBoolean(ASKED), System.getenv().getOrDefault(CHECKING, ""));
    }

    static boolean mayRewrite(boolean asked, String checking) {
        if (asked && checking.toLowerCase(Locale.ROOT).equals("true")) {
            throw new IllegalStateException("golden files are not rewritten where CI=true");
        }
        return asked;
    }
}
