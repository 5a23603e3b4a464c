package chargehand.app.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.JobNumber;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** One operation at a time, as at the machine. */
@ExtendWith(Harbour.class)
final class MachineTest {
    private static final JobNumber STUDS = new JobNumber(212);
    private static final double KEY = 96;

    private final DemoServer shop;
    private final BrowserContext context;
    private final Page page;

    MachineTest(DemoServer shop, Chromium chromium) {
        this.shop = shop;
        this.context = chromium.browser().newContext();
        this.page = context.newPage();
    }

    @AfterEach
    void close() {
        context.close();
    }

    private Progress progress() {
        return shop.desk().jobs().find(STUDS).orElseThrow().progress().orElseThrow();
    }

    @Test
    void operation_done_isTickedAndTheNextOneShown() {
        StepAt first = progress().next().orElseThrow();
        page.navigate(shop.address("/jobs/" + STUDS + "/machine"));
        assertThat(page.locator("h1"))
                .hasText(progress().operation(first).orElseThrow().say());
        button("Done, next").click();
        StepAt next = progress().next().orElseThrow();
        assertThat(progress().isTicked(first)).isTrue();
        assertThat(page.locator("h1"))
                .hasText(progress().operation(next).orElseThrow().say());
    }

    @Test
    void keys_atTheMachine_areLargeEnoughForGloves() {
        page.navigate(shop.address("/jobs/" + STUDS + "/machine"));
        for (Locator key : page.locator(".foot .key").all()) {
            BoundingBox box = key.boundingBox();
            assertThat(box.height).isGreaterThanOrEqualTo(KEY);
            assertThat(box.width).isGreaterThanOrEqualTo(KEY);
        }
    }

    @Test
    void reading_outOfItsLimits_saysSoAtOnceAndWhenNoted() {
        StepAt at = progress()
                .steps()
                .filter(step -> operation(step).readings().size() > 0)
                .findFirst()
                .orElseThrow();
        Reading reading = operation(at).readings().getFirst();
        LengthUnit unit = operation(at).settings().unit();
        String over =
                LengthText.in(reading.limits().most().plus(reading.limits().most()), unit);
        page.navigate(
                shop.address("/jobs/" + STUDS + "/machine/" + at.setUp() + "/" + at.operation() + "/" + at.piece()));
        page.locator("#size-1").fill(over);
        assertThat(page.locator("#judged-1 .out")).containsText("over the upper limit");
        page.locator("#size-1").press("Enter");
        assertThat(page.locator("#judged-1 .out")).containsText("over the upper limit");
        assertThat(progress().isIn(at)).isFalse();

        page.locator("#size-1").fill(LengthText.in(reading.limits().middle(), unit));
        assertThat(page.locator("#judged-1 .in")).containsText("is in");
        page.locator("#size-1").fill("about right");
        assertThat(page.locator("#judged-1 .out")).isVisible();
    }

    @Test
    void holdPoint_isPassedOnlyBySomeoneElse() {
        JobNumber bush = new JobNumber(205);
        Progress bushes = shop.desk().jobs().find(bush).orElseThrow().progress().orElseThrow();
        StepAt at = bushes.steps()
                .filter(step -> bushes.operation(step).orElseThrow().hold())
                .findFirst()
                .orElseThrow();
        Operation held = bushes.operation(at).orElseThrow();
        page.navigate(
                shop.address("/jobs/" + bush + "/machine/" + at.setUp() + "/" + at.operation() + "/" + at.piece()));
        for (int i = 1; i <= held.readings().size(); i++) {
            Reading reading = held.readings().get(i - 1);
            page.locator("#size-" + i)
                    .fill(LengthText.exact(
                            reading.limits().middle(), held.settings().unit()));
            page.locator("#size-" + i).press("Enter");
            assertThat(page.locator("#judged-" + i + " .in")).isVisible();
        }
        page.getByLabel("Passed by").fill("lead hand");
        button("Pass it").click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("someone who did not do the work");
        page.getByLabel("Passed by").fill("the mate");
        button("Pass it").click();
        assertThat(page.locator("#hold")).containsText("Passed by the mate");
    }

    private Operation operation(StepAt at) {
        return progress().operation(at).orElseThrow();
    }

    @Test
    void somethingWrong_withoutWords_isRefused_withWords_stopsTheJob() {
        page.navigate(shop.address("/jobs/209/machine"));
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Something's wrong"))
                .click();
        button("Stop the job").click();
        assertThat(page.locator(".saying")).containsText("What the job waits for");
        page.locator("textarea").fill("a new saw blade");
        button("Stop the job").click();
        assertThat(page.locator(".bar.stop").first()).containsText("Waits for a new saw blade");
        button("It has come: go on").click();
        assertThat(page.locator(".line .now")).containsText("In hand");
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true));
    }
}
