package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static chargehand.book.use.Shopfloor.pin;
import static chargehand.book.use.Shopfloor.refused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.job.Stage;
import chargehand.book.method.Basis;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.progress.StepAt;
import chargehand.book.shop.ShopTexts;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class PlanMethodTest {
    private final Shopfloor shop = new Shopfloor();
    private final PlanMethod plan = shop.desk.planMethod();

    private Job drawn(int length) {
        Job job = shop.asked();
        done(shop.desk.drawPart().save(job.number(), pin("C2", length), 0, "lead hand"));
        return job;
    }

    @Test
    void method_found_makesTheJobReady() {
        Job job = drawn(50);
        MethodRecord planned = done(plan.plan(job.number(), "lead hand"));
        assertThat(planned.basis()).isEqualTo(new Basis("C2", 1, 2, 1));
        assertThat(planned.method().orElseThrow().count()).isEqualTo(2);
        JobFile file = shop.file(job.number());
        assertThat(file.job().stage()).isEqualTo(Stage.READY);
        assertThat(file.planned()).contains(planned);
        assertThat(file.lags()).isEmpty();
    }

    @Test
    void wishes_onceAsked_areKeptThroughPlanningAgain() {
        Job job = drawn(50);
        List<String> wishes = List.of("without small lathe", "with stock A1");
        done(plan.plan(job.number(), wishes, "lead hand"));
        done(shop.desk.drawPart().save(job.number(), pin("C3", 60), 1, "lead hand"));
        done(plan.plan(job.number(), "lead hand"));
        assertThat(shop.file(job.number()).wishes()).isEqualTo(wishes);
        done(plan.plan(job.number(), List.of(), "lead hand"));
        assertThat(shop.file(job.number()).wishes()).isEmpty();
    }

    @Test
    void wishes_thatThePlannerDoesNotKnow_areRefusedAndNothingIsKept() {
        Job job = drawn(50);
        assertThat(fieldsRefused(plan.plan(job.number(), List.of("with luck"), "lead hand")))
                .containsExactly("wishes");
        assertThat(shop.file(job.number()).planned()).isEmpty();
    }

    @Test
    void method_thatDoesNotExist_leavesItsReasons() {
        Job job = drawn(500);
        MethodRecord planned = done(plan.plan(job.number(), "lead hand"));
        assertThat(planned.finding()).isInstanceOf(Finding.NotHere.class);
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.BEING_DRAWN);
        assertThat(shop.file(job.number()).next()).isEqualTo(NextStep.UNLOCK);
        assertThat(shop.file(job.number()).progress()).isEmpty();
    }

    @Test
    void method_thatDoesNotReplay_isNotKept() {
        Job job = drawn(5);
        assertThat(fieldsRefused(plan.plan(job.number(), "lead hand"))).containsExactly("method");
        assertThat(shop.file(job.number()).planned()).isEmpty();
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.BEING_DRAWN);
    }

    @Test
    void drawing_missingOrFaulty_isRefused() {
        Job job = shop.asked();
        assertThat(fieldsRefused(plan.plan(job.number(), "lead hand"))).containsExactly("part");
        done(shop.desk.drawPart().save(job.number(), Shopfloor.PIN.replace("round", "rond"), 0, "lead hand"));
        assertThat(refused(plan.plan(job.number(), "lead hand")))
                .singleElement()
                .satisfies(objection -> assertThat(objection.say()).contains("a fault in line 7"));
        assertThat(fieldsRefused(plan.plan(new JobNumber(99), "lead hand"))).containsExactly("job");
        assertThat(fieldsRefused(plan.plan(job.number(), ""))).containsExactly("who");
    }

    @Test
    void kit_thatCannotBeRead_isRefused() {
        Job job = drawn(50);
        done(shop.desk.keepTexts().replace(Map.of(), 1, "lead hand"));
        assertThat(fieldsRefused(plan.plan(job.number(), "lead hand"))).containsExactly(ShopTexts.RACK);
    }

    @Test
    void drawing_changedWhileThePlannerWorks_keepsNothing() {
        Job job = drawn(50);
        var interrupted = new PlanMethod(
                shop.book,
                (part, count, wishes, texts) -> {
                    done(shop.desk.drawPart().save(job.number(), pin("C2", 51), 1, "helper"));
                    return new PinPlanner().plan(part, count, wishes, texts);
                },
                Shopfloor.CLOCK);
        assertThat(fieldsRefused(interrupted.plan(job.number(), "lead hand"))).containsExactly("part");
        assertThat(shop.file(job.number()).planned()).isEmpty();
    }

    @Test
    void countOrKit_changedAfterwards_isSeen() {
        Job job = shop.ready();
        RequestAsWritten four = Shopfloor.request().with(RequestAsWritten.COUNT, "4");
        done(shop.desk.amendRequest().amend(job.number(), four, 1, "lead hand"));
        done(shop.desk.keepTexts().write("kit/lathe.yaml", "swing: 13 in", 1, "lead hand"));
        JobFile file = shop.file(job.number());
        assertThat(file.lags()).containsExactlyInAnyOrder(JobFile.Lag.COUNT, JobFile.Lag.KIT);
        assertThat(file.next()).isEqualTo(NextStep.PLAN);
        done(plan.plan(job.number(), "lead hand"));
        assertThat(shop.file(job.number()).lags()).isEmpty();
        assertThat(shop.desk.jobs().plannings(job.number())).hasSize(2);
    }

    @Test
    void method_inHand_isNotPulledAway() {
        Job job = shop.ready();
        done(shop.desk.tickOperation().tick(job.number(), new StepAt(1, 1, 1), "learner"));
        assertThat(fieldsRefused(plan.plan(job.number(), "lead hand"))).containsExactly("job");
        done(shop.desk.moveJob().move(job.number(), Stage.READY, "better stock came", "lead hand"));
        MethodRecord again = done(plan.plan(job.number(), "lead hand"));
        assertThat(again.number()).isEqualTo(2);
        assertThat(shop.file(job.number()).progress().orElseThrow().done()).isZero();
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.READY);
    }

    @Test
    void job_notWanted_isNotPlanned() {
        Job job = drawn(50);
        done(shop.desk.moveJob().move(job.number(), Stage.NOT_WANTED, "", "lead hand"));
        assertThat(fieldsRefused(plan.plan(job.number(), "lead hand"))).containsExactly("job");
    }
}
