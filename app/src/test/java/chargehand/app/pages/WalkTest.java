package chargehand.app.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.JobNumber;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** From a request to the printed sheet, as a person goes. */
@ExtendWith(Harbour.class)
final class WalkTest {
    private static final String STUD = DemoServer.text(Path.of("..", "demo", "parts", "metric-stud.yaml"))
            .replace("Winch-frame stud", "Gate stud");

    private final DemoServer shop;
    private final BrowserContext context;
    private final Page page;

    WalkTest(DemoServer shop, Chromium chromium) {
        this.shop = shop;
        this.context = chromium.browser().newContext();
        this.page = context.newPage();
    }

    @AfterEach
    void close() {
        context.close();
    }

    @Test
    void job_fromRequestToSheet_isDrawnPlannedAndPrinted() throws IOException {
        page.navigate(shop.address("/"));
        link("Take a new job").click();
        page.getByLabel("What it belongs to").fill("Lock gate");
        page.getByLabel("What is wrong, or wanted").fill("A stud of the sill has sheared.");
        page.getByLabel("Who asks").fill("lock keeper");
        button("Take the job").click();
        assertThat(page.locator("h1")).containsText("A stud of the sill has sheared");

        link("Draw the part").click();
        page.getByLabel("The part in words and sizes").fill(STUD);
        assertThat(page.locator("#seen svg")).containsText("M20");
        button("Save the drawing").click();
        assertThat(page.locator("h1")).containsText("Gate stud");

        page.locator("h1 a").click();
        button("Work out a method").click();
        assertThat(page.locator(".setup").first()).isVisible();

        String sheet = link("Print the sheet").getAttribute("href");
        APIResponse printed = page.request().get(shop.address(sheet));
        assertThat(printed.status()).isEqualTo(200);
        assertThat(text(printed.body())).contains("Gate stud", "Set-up 1 of");
    }

    private static String text(byte[] pdf) throws IOException {
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void request_withGaps_isRefusedBesideEachFieldAndKeepsTheRest() {
        page.navigate(shop.address("/jobs/new"));
        page.getByLabel("What it belongs to").fill("Lock gate");
        page.getByLabel("How many").fill("a dozen");
        button("Take the job").click();
        assertThat(page.locator("label", containing("How many"))).containsText("How many must be a whole number");
        assertThat(page.locator("label", containing("Who asks"))).containsText("The name of who asks");
        assertThat(page.getByLabel("What it belongs to")).hasValue("Lock gate");
        assertThat(page.getByLabel("How many")).hasValue("a dozen");
    }

    private static Page.LocatorOptions containing(String text) {
        return new Page.LocatorOptions().setHasText(text);
    }

    @Test
    void drawing_withAWrongSize_isRefusedBesideItsLineAndNothingIsLost() {
        page.navigate(shop.address("/jobs/211/drawing"));
        String wrong = STUD.replaceFirst("length: .*", "length: forty-odd");
        int line = wrong.substring(0, wrong.indexOf("forty-odd")).split("\n", -1).length;
        page.getByLabel("The part in words and sizes").fill(wrong);
        assertThat(page.locator("#seen .said")).containsText("line " + line);
        assertThat(page.locator(".gutter b").first()).hasText(Integer.toString(line));

        button("Save the drawing").click();
        assertThat(page.getByLabel("The part in words and sizes")).hasValue(wrong);
        assertThat(page.locator("#seen .said")).containsText("line " + line);
        assertThat(shop.desk()
                        .jobs()
                        .find(new JobNumber(211))
                        .orElseThrow()
                        .part()
                        .orElseThrow()
                        .issue()
                        .text())
                .isEqualTo(wrong);
    }

    @Test
    void drawing_savedByTwo_showsBothAndKeepsWhatWasTyped() {
        page.navigate(shop.address("/jobs/207/drawing"));
        try (BrowserContext other = context.browser().newContext()) {
            Page theirs = other.newPage();
            theirs.navigate(shop.address("/jobs/207/drawing"));
            theirs.getByLabel("The part in words and sizes").fill(STUD.replace("Gate stud", "Theirs"));
            theirs.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Save the drawing"))
                    .click();
            theirs.waitForURL(Pattern.compile(".*/drawing$"));
            assertThat(theirs.locator("h1")).containsText("Theirs");
        }
        page.getByLabel("The part in words and sizes").fill(STUD.replace("Gate stud", "Mine"));
        button("Save the drawing").click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("Someone else saved this drawing meanwhile");
        assertThat(page.locator("#text")).hasValue(STUD.replace("Gate stud", "Mine"));
        assertThat(page.locator(".theirs")).containsText("part: Theirs");
    }

    @Test
    void request_byKeyboardAlone_isTaken() {
        page.navigate(shop.address("/"));
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        assertThat(page.locator("#main")).isFocused();
        page.keyboard().press("Tab");
        assertThat(link("Take a new job")).isFocused();
        page.keyboard().press("Enter");
        page.waitForURL("**/jobs/new");
        page.locator("#main").focus();
        for (String typed : new String[] {"Crane", "Hook pin worn", "dock foreman", "2"}) {
            page.keyboard().press("Tab");
            page.keyboard().type(typed);
        }
        page.keyboard().press("Enter");
        assertThat(page.locator("h1")).containsText("Hook pin worn, 2");
    }

    private Locator link(String name) {
        return page.getByRole(
                AriaRole.LINK, new GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true));
    }
}
