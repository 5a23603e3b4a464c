package chargehand.app.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page in three widths: nothing runs over, nothing is complained of; pictures are kept to be looked at. */
@ExtendWith(Harbour.class)
final class PagesTest {
    private final DemoServer shop;
    private final Chromium chromium;

    PagesTest(DemoServer shop, Chromium chromium) {
        this.shop = shop;
        this.chromium = chromium;
    }

    private static Map<String, String> pages() {
        var pages = new LinkedHashMap<String, String>();
        pages.put("job-book", "/");
        pages.put("job-book-found", "/?q=tug&stage=all");
        pages.put("new-job", "/jobs/new");
        pages.put("job", "/jobs/203");
        pages.put("job-stopped", "/jobs/204");
        pages.put("request", "/jobs/202/request");
        pages.put("drawing", "/jobs/202/drawing");
        pages.put("drawing-new", "/jobs/210/drawing");
        pages.put("method", "/jobs/203/method");
        pages.put("method-not-yet", "/jobs/210/method");
        pages.put("machine-first", "/jobs/203/machine/2/1/1");
        pages.put("machine", "/jobs/201/machine/3/3/1");
        pages.put("wrong", "/jobs/203/machine/1/1/1/wrong");
        pages.put("proving", "/jobs/212/proving");
        pages.put("passed", "/jobs/212/passed");
        pages.put("kit", "/kit");
        pages.put("sums", "/sums");
        pages.put("sum", "/sums/size?size=1+3%2F8");
        pages.put("sum-refused", "/sums/size?size=nonsense");
        pages.put("reference", "/sums/reference");
        pages.put("not-here", "/jobs/999999");
        return pages;
    }

    /** The pages worth a look in dim light too. */
    private static final Set<String> DIM = Set.of("job-book", "job", "drawing", "method", "machine", "proving");

    @ParameterizedTest
    @CsvSource({"360, 740", "800, 1200", "1440, 900"})
    void pages_inThreeWidths_fitAndAreQuiet(int width, int height) {
        var options = new NewContextOptions().setViewportSize(width, height);
        assertThat(look(pages(), options, Integer.toString(width))).isEmpty();
    }

    @Test
    void pages_inDimLight_fitAndAreQuiet() {
        Map<String, String> few = pages();
        few.keySet().retainAll(DIM);
        var options = new NewContextOptions().setViewportSize(1000, 800).setColorScheme(ColorScheme.DARK);
        assertThat(few).hasSameSizeAs(DIM);
        assertThat(look(few, options, "dim")).isEmpty();
    }

    private List<String> look(Map<String, String> pages, NewContextOptions options, String name) {
        try (BrowserContext context = chromium.browser().newContext(options)) {
            Screens screens = Screens.of(context, name);
            List<String> seen = new ArrayList<>();
            pages.forEach((called, path) -> seen.addAll(screens.look(shop.address(path), called)));
            return seen;
        }
    }
}
