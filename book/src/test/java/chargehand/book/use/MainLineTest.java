package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.JobNumber;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import chargehand.book.progress.StepAt;
import org.junit.jupiter.api.Test;

/** One job from request to door, and what the book says is to be done next at every step. */
final class MainLineTest {
    private final Shopfloor shop = new Shopfloor();
    private final Desk desk = shop.desk;

    @Test
    void job_fromRequestToDoor_saysWhatComesNext() {
        JobNumber job = shop.asked().number();
        assertThat(shop.file(job).next()).isEqualTo(NextStep.DRAW);

        done(desk.drawPart().save(job, Shopfloor.PIN.replace("50", "fifty"), 0, "lead hand"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.MEND_DRAWING);

        done(desk.drawPart().save(job, Shopfloor.PIN, 1, "lead hand"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.PLAN);

        done(desk.planMethod().plan(job, "lead hand"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.BEGIN);

        make(job);
        assertThat(shop.file(job).next()).isEqualTo(NextStep.PROVE);

        done(desk.moveJob().move(job, Stage.TO_BE_PROVED, "", "learner"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.PASS);

        done(desk.moveJob().move(job, Stage.PASSED, "", "lead hand"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.SEND_OUT);

        done(desk.moveJob().move(job, Stage.GONE_OUT, "fetched by the bridge keeper", "lead hand"));
        assertThat(shop.file(job).next()).isEqualTo(NextStep.NOTHING);
        assertThat(shop.file(job).moves())
                .extracting(Move::to)
                .containsExactly(
                        Stage.BEING_DRAWN,
                        Stage.READY,
                        Stage.IN_HAND,
                        Stage.TO_BE_PROVED,
                        Stage.PASSED,
                        Stage.GONE_OUT);
    }

    private void make(JobNumber job) {
        for (int piece = 1; piece <= 2; piece++) {
            StepAt turn = new StepAt(1, 2, piece);
            done(desk.tickOperation().tick(job, new StepAt(1, 1, piece), "learner"));
            done(desk.noteReading().note(job, new NoteReading.Place(turn, 1), "20.02", "learner"));
            done(desk.tickOperation().tick(job, turn, "learner"));
            done(desk.passHold().pass(job, turn, "lead hand"));
            assertThat(shop.file(job).next()).isEqualTo(NextStep.GO_ON);
            done(desk.tickOperation().tick(job, new StepAt(1, 3, piece), "learner"));
        }
    }
}
