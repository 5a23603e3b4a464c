package chargehand.app.pages;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;

/** Looks at a page in one width, keeps a picture of it, and says what nobody should see. */
record Screens(BrowserContext context, Page page, String name, List<String> console) {
    private static final Path KEPT = Path.of("target", "screenshots");
    private static final Set<String> COMPLAINTS = Set.of("error", "warning");

    /** A page that says what is not there or could not be taken answers with such a number, and the browser notes it. */
    private static final String ASKED_FOR = "the server responded with a status of 4";

    private static final int LONG_ENOUGH = 3_000;

    static Screens of(BrowserContext context, String name) {
        Page page = context.newPage();
        var console = new CopyOnWriteArrayList<String>();
        page.onConsoleMessage(message -> {
            if (COMPLAINTS.contains(message.type()) && !message.text().contains(ASKED_FOR)) {
                console.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(fault -> console.add(page.url() + ": " + fault));
        return new Screens(context, page, name, console);
    }

    /** Opens an address and keeps its picture under a name. */
    List<String> look(String address, String called) {
        page.navigate(address);
        page.screenshot(new ScreenshotOptions().setFullPage(true).setPath(KEPT.resolve(called + "-" + name + ".png")));
        var seen = new ArrayList<>(console);
        console.clear();
        wider().forEach(element -> seen.add(address + " runs over its width: " + element));
        return seen;
    }

    private int height() {
        return ((Number) page.evaluate("() => document.documentElement.scrollHeight")).intValue();
    }

    /** What makes the page scroll sideways. */
    private List<String> wider() {
        Object found = page.evaluate("""
                () => document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] :
                    [...document.querySelectorAll('body *')]
                        .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
                        .slice(0, 4)
                        .map(e => e.tagName + '.' + e.className)
                """);
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }
}
