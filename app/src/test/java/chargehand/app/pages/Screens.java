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

    /** What makes the page scroll sideways. */
    private static final String WIDER = """
            () => document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] :
                [...document.querySelectorAll('body *')]
                    .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
                    .slice(0, 4)
                    .map(e => e.tagName + '.' + e.className)
            """;

    /** Words in letters too small to read at a machine; drawings scale and are left out. */
    private static final String SMALL = """
            () => [...document.querySelectorAll('body *:not(svg *, script)')]
                .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()))
                .filter(e => parseFloat(getComputedStyle(e).fontSize) < 15)
                .slice(0, 4)
                .map(e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 20))
            """;

    /** Keys, fields and folds too small for a thumb. */
    private static final String NARROW = """
            () => [...document.querySelectorAll(
                    '.key, button, summary, textarea, input:not([type=hidden], [type=radio]), .pick, .strip nav a, .line a')]
                .filter(e => e.checkVisibility() && !e.closest('details:not([open]) > :not(summary)'))
                .filter(e => { const box = e.getBoundingClientRect(); return box.height < 48 || box.width < 48; })
                .slice(0, 4)
                .map(e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 20))
            """;

    private static final int LONG_ENOUGH = 2_400;

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
        page.screenshot(new ScreenshotOptions()
                .setFullPage(height() < LONG_ENOUGH)
                .setPath(KEPT.resolve(called + "-" + name + ".png")));
        var seen = new ArrayList<>(console);
        console.clear();
        found(WIDER).forEach(element -> seen.add(address + " runs over its width: " + element));
        found(SMALL).forEach(element -> seen.add(address + " has letters under 15 px: " + element));
        found(NARROW).forEach(element -> seen.add(address + " has a key under 48 px: " + element));
        return seen;
    }

    private int height() {
        return ((Number) page.evaluate("() => document.documentElement.scrollHeight")).intValue();
    }

    private List<String> found(String script) {
        return ((List<?>) page.evaluate(script)).stream().map(String::valueOf).toList();
    }
}
