package chargehand.app.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page in three widths: nothing runs over, nothing is complained of; pictures are kept to be looked at. */
final class PagesTest {
    private static DemoServer shop;
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        var program = Chromium.installed();
        Assumptions.assumeTrue(program.isPresent(), "no Chromium on this machine");
        shop = DemoServer.start();
        chromium = Chromium.start(program.orElseThrow());
    }

    @AfterAll
    static void close() {
        if (chromium != null) {
            chromium.close();
            shop.close();
        }
    }

    private static Map<String, String> pages() {
        var pages = new LinkedHashMap<String, String>();
        pages.put("job-book", "/");
        pages.put("job-book-found", "/?q=tug&stage=all");
        pages.put("new-job", "/jobs/new");
        pages.put("job", "/jobs/202");
        pages.put("job-stopped", "/jobs/204");
        pages.put("request", "/jobs/202/request");
        pages.put("drawing", "/jobs/202/drawing");
        pages.put("drawing-new", "/jobs/210/drawing");
        pages.put("method", "/jobs/203/method");
        pages.put("method-spindle", "/jobs/201/method");
        pages.put("machine-first", "/jobs/203/machine");
        pages.put("machine", "/jobs/203/machine/1/2/1");
        pages.put("wrong", "/jobs/203/machine/1/2/1/wrong");
        pages.put("proving", "/jobs/203/proving");
        pages.put("kit", "/kit");
        pages.put("sums", "/sums");
        pages.put("sum", "/sums/tapping-drill");
        pages.put("reference", "/sums/reference");
        return pages;
    }

    @ParameterizedTest
    @CsvSource({"360, 740, LIGHT", "800, 1200, LIGHT", "1440, 900, LIGHT", "1440, 900, DARK"})
    void pages_inThreeWidths_fitAndAreQuiet(int width, int height, ColorScheme scheme) {
        var options = new NewContextOptions().setViewportSize(width, height).setColorScheme(scheme);
        try (BrowserContext context = chromium.browser().newContext(options)) {
            String name = width + (scheme == ColorScheme.DARK ? "-dim" : "");
            Screens screens = Screens.of(context, name);
            List<String> seen = new ArrayList<>();
            pages().forEach((called, path) -> seen.addAll(screens.look(shop.address(path), called)));
            assertThat(seen).isEmpty();
        }
    }
}
