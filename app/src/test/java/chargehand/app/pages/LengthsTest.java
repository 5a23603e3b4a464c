package chargehand.app.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.RequestAsWritten;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lengths moved, bracketed and added on the page of a drawing. The spindle and the 80 that closes a circle with its 40 and 120
 * are the worked example of our drawing rules.
 */
@ExtendWith(Harbour.class)
final class LengthsTest {
    private static final String SPINDLE = """
            # as sent by the customer
            part: Spindle
            unit: mm
            material: EN8
            general: ISO 2768-m
            outside:
              - {round: 20, name: tail, length: 25}
              - {groove: 16, name: undercut, length: 3}
              - {round: 25 h7, name: journal, length: 12}
              - {round: 50, name: flange, length: 12}
              - {round: 30, name: body, length: 38}
              - {thread: M24, name: screw, length: 30, at-b: chamfer 2}
            """;

    private final DemoServer shop;
    private final BrowserContext context;
    private final Page page;
    private final JobNumber job;

    LengthsTest(DemoServer shop, Chromium chromium) {
        this.shop = shop;
        context = chromium.browser().newContext();
        page = context.newPage();
        job = drawn();
    }

    private JobNumber drawn() {
        var request = new RequestAsWritten(Map.of(
                RequestAsWritten.ASSET, "Lock gate",
                RequestAsWritten.WANTS, "A spindle.",
                RequestAsWritten.ASKER, "lock keeper"));
        Job taken = ((Entered.Done<Job>) shop.desk().takeRequest().take(request)).value();
        shop.desk().drawPart().save(taken.number(), SPINDLE, 0, "lead hand");
        return taken.number();
    }

    @AfterEach
    void close() {
        context.close();
    }

    private String saved() {
        return shop.desk()
                .jobs()
                .find(job)
                .orElseThrow()
                .part()
                .orElseThrow()
                .issue()
                .text();
    }

    private int version() {
        return shop.desk()
                .jobs()
                .find(job)
                .orElseThrow()
                .part()
                .orElseThrow()
                .issue()
                .version();
    }

    private void open() {
        page.navigate(shop.address("/jobs/" + job + "/drawing"));
    }

    private Locator row(String says) {
        return page.locator(".length")
                .filter(new Locator.FilterOptions().setHas(page.locator("summary b", says(says))));
    }

    private static Page.LocatorOptions says(String says) {
        return new Page.LocatorOptions().setHasText(Pattern.compile("^" + says + "$"));
    }

    private static Locator key(Locator within, String label) {
        return within.locator("button", new Locator.LocatorOptions().setHasText(label));
    }

    private static void choose(Locator row, String label) {
        row.locator("summary").click();
        key(row, label).click();
    }

    @Test
    void length_touchedInTheDrawing_opensWhatMayBeDoneAndIsBracketed() {
        open();
        page.locator(".tap[href='#length-1-3']").click();
        assertThat(key(row("15"), "In brackets")).isVisible();
        key(row("15"), "In brackets").click();

        assertThat(row("\\(15\\)")).hasCount(1);
        assertThat(saved()).startsWith(SPINDLE).contains("from: undercut, A", "to: flange, A", "give: in brackets");
        assertThat(version()).isEqualTo(2);
    }

    @Test
    void length_added_isRefusedWithItsCircleAndGivenInPlaceOfOneOfIt() {
        open();
        page.locator("select[name=from]").selectOption("3");
        page.locator("select[name=to]").selectOption("6");
        key(page.locator(".added"), "Give this length").click();

        assertThat(page.locator(".added .clash"))
                .containsText("80 from journal / flange to end B closes a circle with 120 from end A to end B,"
                        + " and 40 from end A to journal / flange");
        assertThat(page.locator("select[name=from]")).hasValue("3");
        assertThat(saved()).isEqualTo(SPINDLE);

        key(page.locator(".clash"), "40 in brackets").click();
        assertThat(row("\\(40\\)")).hasCount(1);
        assertThat(row("80")).hasCount(1);
        assertThat(page.locator(".clash")).hasCount(0);
    }

    @Test
    void length_movedAfterTyping_keepsWhatWasTyped() {
        open();
        String typed = SPINDLE.replace("round: 30", "round: 32");
        page.getByLabel("The part in words and sizes").fill(typed);
        assertThat(page.locator("#seen svg")).containsText("32");
        choose(row("12"), "Farther out");

        assertThat(row("12").locator("small")).hasText("as you wanted it");
        assertThat(saved()).startsWith(typed).contains("tier: farther");
        choose(row("12"), "As it was chosen");
        assertThat(row("12").locator("small")).hasCount(0);
        assertThat(saved()).isEqualTo(typed);
    }

    @Test
    void length_chosenWithoutScript_isMoved() {
        try (BrowserContext plain = context.browser().newContext(new NewContextOptions().setJavaScriptEnabled(false))) {
            Page still = plain.newPage();
            still.navigate(shop.address("/jobs/" + job + "/drawing"));
            Locator row = still.locator(".length").filter(new Locator.FilterOptions().setHasText("120"));
            choose(row, "Above the view");

            assertThat(still.locator("h1")).containsText("Spindle");
        }
        assertThat(saved()).contains("side: above");
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 800, 1440})
    void lengths_openInThreeWidths_fitAndCanBeTouched(int width) {
        try (BrowserContext sized = context.browser().newContext(new NewContextOptions().setViewportSize(width, 900))) {
            Screens screens = Screens.of(sized, Integer.toString(width));
            assertThat(screens.look(shop.address("/jobs/" + job + "/drawing"), "lengths"))
                    .isEmpty();
            screens.page().locator(".length summary").first().click();
            screens.page().locator("select[name=from]").selectOption("3");
            screens.page().locator("select[name=to]").selectOption("6");
            key(screens.page().locator(".added"), "Give this length").click();
            screens.page().locator(".clash").waitFor();
            screens.page()
                    .screenshot(new ScreenshotOptions()
                            .setFullPage(true)
                            .setPath(Path.of("target", "screenshots", "lengths-refused-" + width + ".png")));
            double least = ((Number) screens.page()
                            .evaluate("() => Math.min(...[...document.querySelectorAll('.clash .key, .added select')]"
                                    + ".map(e => e.getBoundingClientRect().height))"))
                    .doubleValue();
            assertThat(least).isGreaterThanOrEqualTo(44);
        }
    }
}
