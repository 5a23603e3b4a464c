package chargehand.book.use;

import static chargehand.book.use.Shopfloor.PIN;
import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static chargehand.book.use.Shopfloor.pin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import chargehand.book.Changed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.part.DrawnPart;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.progress.StepAt;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.api.Test;

final class DrawPartTest {
    private static final String FAULTY = "part: Locking pin\nmaterial: [";

    private final Shopfloor shop = new Shopfloor();
    private final DrawPart draw = shop.desk.drawPart();

    @Test
    void drawing_withoutFault_isDrawn() {
        Job job = shop.asked();
        DrawnPart drawn = done(draw.save(job.number(), PIN, 0, "lead hand"));
        assertThat(drawn.part().orElseThrow().title()).isEqualTo("Locking pin");
        assertThat(drawn.issue().face()).isEqualTo(new Face(true, "Locking pin", "", "A", "bright mild steel"));
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.BEING_DRAWN);
    }

    @Test
    void drawing_withFaults_isKeptAsTyped() {
        Job job = shop.asked();
        DrawnPart drawn = done(draw.save(job.number(), FAULTY, 0, "lead hand"));
        assertThat(drawn.reading()).isInstanceOf(PartReading.Faulty.class);
        DrawnPart kept = shop.file(job.number()).part().orElseThrow();
        assertThat(kept.issue().text()).isEqualTo(FAULTY);
        assertThat(kept.issue().isDrawn()).isFalse();
    }

    @Test
    void drawing_savedByTwo_keepsTheFirstAndShowsItToTheSecond() {
        Job job = shop.drawn();
        DrawnPart first = done(draw.save(job.number(), pin("A", 51), 1, "lead hand"));
        assertThat(draw.save(job.number(), pin("A", 52), 1, "helper"))
                .asInstanceOf(type(Changed.Overtaken.class))
                .satisfies(overtaken -> assertThat(overtaken.now()).isEqualTo(first));
        assertThat(shop.desk.jobs().drawings(job.number()))
                .extracting(PartIssue::text)
                .containsExactly(PIN, pin("A", 51));
    }

    @Test
    void drawing_savedUnchanged_isNotSavedAgain() {
        Job job = shop.ready();
        DrawnPart again = done(draw.save(job.number(), PIN, 0, "helper"));
        assertThat(again.issue().version()).isEqualTo(1);
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.READY);
    }

    @Test
    void drawing_changedWhenReady_isBeingDrawnAgain() {
        Job job = shop.ready();
        done(draw.save(job.number(), pin("A", 60), 1, "lead hand"));
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.BEING_DRAWN);
        assertThat(shop.file(job.number()).lags()).containsExactly(JobFile.Lag.DRAWING);
        assertThat(shop.file(job.number()).next()).isEqualTo(NextStep.PLAN);
    }

    @Test
    void drawing_changedWhenStopped_leavesItStopped() {
        Job job = shop.drawn();
        done(shop.desk.moveJob().move(job.number(), Stage.STOPPED, "the broken half", "lead hand"));
        done(draw.save(job.number(), pin("A", 60), 1, "lead hand"));
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.STOPPED);
    }

    @Test
    void drawing_changedAfterWorkBegan_carriesAnotherIssue() {
        Job job = shop.ready();
        done(shop.desk.tickOperation().tick(job.number(), new StepAt(1, 1, 1), "learner"));
        assertThat(fieldsRefused(draw.save(job.number(), pin("A", 60), 1, "lead hand")))
                .containsExactly("issue");
        done(draw.save(job.number(), FAULTY, 1, "lead hand"));
        assertThat(fieldsRefused(draw.save(job.number(), pin("A", 60), 2, "lead hand")))
                .containsExactly("issue");
        done(draw.save(job.number(), pin("B", 60), 2, "lead hand"));
        assertThat(shop.job(job.number()).stage()).isEqualTo(Stage.BEING_DRAWN);
    }

    @Test
    void drawing_ofWhatIsMade_isRefused() {
        Job job = shop.ready();
        for (Stage stage : new Stage[] {Stage.IN_HAND, Stage.TO_BE_PROVED, Stage.PASSED, Stage.GONE_OUT}) {
            done(shop.desk.moveJob().move(job.number(), stage, "", "lead hand"));
            if (stage != Stage.IN_HAND) {
                assertThat(fieldsRefused(draw.save(job.number(), pin("B", 60), 1, "lead hand")))
                        .containsExactly("job");
            }
        }
    }

    @Test
    void text_thatCannotBeKept_isRefused() {
        Job job = shop.asked();
        assertThat(fieldsRefused(draw.save(job.number(), " \n", 0, "lead hand")))
                .containsExactly("text");
        assertThat(fieldsRefused(draw.save(job.number(), "a\u0000b", 0, "lead hand")))
                .containsExactly("text");
        assertThat(fieldsRefused(draw.save(job.number(), "x".repeat(200_001), 0, "")))
                .containsExactly("who", "text");
        assertThat(fieldsRefused(draw.save(job.number(), PIN, 3, "lead hand"))).containsExactly("basedOn");
        assertThat(fieldsRefused(draw.save(new JobNumber(99), PIN, 0, "lead hand")))
                .containsExactly("job");
        assertThat(shop.file(job.number()).part()).isEmpty();
    }
}
