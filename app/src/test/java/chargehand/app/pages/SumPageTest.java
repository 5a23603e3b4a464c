package chargehand.app.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A sum asked on its page. */
@ExtendWith(Harbour.class)
final class SumPageTest {
    private final DemoServer shop;
    private final BrowserContext context;
    private final Page page;

    SumPageTest(DemoServer shop, Chromium chromium) {
        this.shop = shop;
        this.context = chromium.browser().newContext();
        this.page = context.newPage();
    }

    @AfterEach
    void close() {
        context.close();
    }

    /** 10.2 mm is the tapping drill for M12 in ISO 2306:1972, table 1 (from memory). */
    @Test
    void tappingDrill_forM12_isAnsweredWithItsWorking() {
        page.navigate(shop.address("/sums"));
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Tapping drill"))
                .click();
        page.getByLabel("Thread", new Page.GetByLabelOptions().setExact(false))
                .first()
                .fill("M12");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Work it out"))
                .click();
        assertThat(page.locator(".answer .results")).containsText("10.2 mm");
        assertThat(page.locator(".answer .working li").first()).isVisible();
        assertThat(page.locator("input[name=thread]")).hasValue("M12");
    }

    @Test
    void sum_askedNonsense_isRefusedBesideTheFieldAndKeepsIt() {
        page.navigate(shop.address("/sums/tapping-drill"));
        page.locator("input[name=thread]").fill("a stout one");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Work it out"))
                .click();
        assertThat(page.locator(".field.refused .saying")).isVisible();
        assertThat(page.locator("input[name=thread]")).hasValue("a stout one");
    }

    /** The demo's kit has three-jaws, four-jaws and mandrels, and no soft jaws. */
    @Test
    void chuck_ofTheShopsOwn_isFilledInAndUsed() {
        page.navigate(shop.address("/sums/chuck"));
        assertThat(page.locator("input[name=owned]")).hasValue("three-jaw, four-jaw, mandrel");
        page.locator("input[name=teeth]").fill("26");
        page.locator("input[name=outside]").fill("56 mm");
        page.locator("input[name=jawWidth]").fill("8 mm");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Work it out"))
                .click();
        assertThat(page.locator(".answer .results")).containsText("four jaws that move singly");
        assertThat(page.locator(".answer .results")).containsText("not owned");
    }

    @Test
    void reference_everySum_hasItsExamplesWorked() {
        page.navigate(shop.address("/sums/reference"));
        List<Sum> sums = Sums.load().list();
        int examples = sums.stream().mapToInt(sum -> sum.examples().size()).sum();
        assertThat(page.locator(".chapter")).hasCount(sums.size());
        assertThat(page.locator(".answer .results")).hasCount(examples);
        assertThat(examples).isGreaterThanOrEqualTo(sums.size());
    }
}
