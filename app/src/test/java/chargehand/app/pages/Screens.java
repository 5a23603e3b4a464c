package chargehand.app.pages;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Looks at a page in one width, keeps a picture of it, and says what nobody should see. */
record Screens(BrowserContext context, Page page, String name, List<String> console) {
    private static final Path KEPT = Path.of("target", "screenshots");

    static Screens of(BrowserContext context, String name) {
        Page page = context.newPage();
        var console = new CopyOnWriteArrayList<String>();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
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
