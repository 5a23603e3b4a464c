package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static chargehand.book.use.Shopfloor.refused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.job.Stage;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.progress.Taken;
import chargehand.book.progress.Verdict;
import chargehand.book.use.NoteReading.Place;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ticks, readings and hold points on two pins, each faced, turned to 20 ± 0.1 with a hold point, and parted off. */
final class MakingTest {
    private static final StepAt FACE = new StepAt(1, 1, 1);
    private static final StepAt TURN = new StepAt(1, 2, 1);
    private static final StepAt PART_OFF = new StepAt(1, 3, 1);

    private final Shopfloor shop = new Shopfloor();
    private final TickOperation ticks = shop.desk.tickOperation();
    private final NoteReading readings = shop.desk.noteReading();
    private final PassHold holds = shop.desk.passHold();
    private final JobNumber job = shop.ready().number();

    private Taken measured(String size) {
        return done(readings.note(job, new Place(TURN, 1), size, "learner"))
                .taken(TURN, 1)
                .orElseThrow();
    }

    @Test
    void operation_ticked_putsTheJobInHand() {
        Progress progress = done(ticks.tick(job, FACE, "learner"));
        assertThat(progress.isTicked(FACE)).isTrue();
        assertThat(progress.tick(FACE).orElseThrow().who()).isEqualTo("learner");
        assertThat(progress.next()).contains(TURN);
        assertThat(progress.done()).isEqualTo(1);
        assertThat(progress.all()).isEqualTo(6);
        assertThat(shop.job(job).stage()).isEqualTo(Stage.IN_HAND);
        assertThat(shop.file(job).entries()).isEqualTo(progress.entries());
    }

    @Test
    void operation_tickedTwice_isTickedOnce() {
        done(ticks.tick(job, FACE, "learner"));
        assertThat(done(ticks.tick(job, FACE, "helper")).entries()).hasSize(1);
    }

    @Test
    void tick_takenBack_staysInTheHistory() {
        done(ticks.tick(job, FACE, "learner"));
        Progress progress = done(ticks.untick(job, FACE, "learner"));
        assertThat(progress.isTicked(FACE)).isFalse();
        assertThat(progress.entries()).hasSize(2);
        assertThat(done(ticks.untick(job, FACE, "learner")).entries()).hasSize(2);
        assertThat(done(ticks.tick(job, FACE, "learner")).isTicked(FACE)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "19.9,     IN,    19.9",
        "20.1,     IN,    20.1",
        "20.100001, OVER,  20.100001",
        "19.899,   UNDER, 19.899",
        ".788 in,  IN,    .788 in",
        "13/16 in, OVER,  13/16 in"
    })
    void reading_noted_saysHowItLies(String size, Verdict verdict, String text) {
        Taken taken = measured(size);
        assertThat(taken.verdict()).isEqualTo(verdict);
        assertThat(taken.measured().size().text()).isEqualTo(text);
        assertThat(taken.by().who()).isEqualTo("learner");
    }

    @Test
    void reading_takenAgain_putsTheFirstRight() {
        measured("20.4");
        Taken again = measured("20.05");
        assertThat(again.measured().corrects()).contains(1);
        assertThat(again.verdict()).isEqualTo(Verdict.IN);
        assertThat(shop.file(job).entries()).hasSize(2);
        assertThat(shop.file(job).progress().orElseThrow().isIn(TURN)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "about 20", "20 furlongs", "NaN", "1e9", "20..1"})
    void reading_thatIsNoSize_isRefused(String size) {
        assertThat(fieldsRefused(readings.note(job, new Place(TURN, 1), size, "learner")))
                .containsExactly("size");
        assertThat(shop.job(job).stage()).isEqualTo(Stage.READY);
    }

    @Test
    void holdPoint_notPassed_stopsTheSamePieceOnly() {
        assertThat(refused(ticks.tick(job, PART_OFF, "learner")))
                .singleElement()
                .satisfies(objection -> assertThat(objection.say()).contains(TURN.toString()));
        assertThat(done(ticks.tick(job, new StepAt(1, 1, 2), "learner")).done()).isEqualTo(1);
    }

    @Test
    void holdPoint_passedByAnother_letsTheWorkGoOn() {
        measured("20.05");
        done(ticks.tick(job, TURN, "learner"));
        Progress progress = done(holds.pass(job, TURN, "lead hand"));
        assertThat(progress.holdPassed(TURN).orElseThrow().who()).isEqualTo("lead hand");
        assertThat(progress.heldAt(PART_OFF)).isEmpty();
        assertThat(done(ticks.tick(job, PART_OFF, "learner")).isTicked(PART_OFF))
                .isTrue();
    }

    @Test
    void holdPoint_passedByWhoMeasuredOrMade_isRefused() {
        done(ticks.tick(job, TURN, "helper"));
        measured("20.05");
        assertThat(fieldsRefused(holds.pass(job, TURN, " LEARNER"))).containsExactly("who");
        assertThat(fieldsRefused(holds.pass(job, TURN, "helper"))).containsExactly("who");
    }

    @Test
    void holdPoint_withAReadingMissingOrOut_isRefused() {
        assertThat(fieldsRefused(holds.pass(job, TURN, "lead hand"))).containsExactly("step");
        measured("20.3");
        assertThat(fieldsRefused(holds.pass(job, TURN, "lead hand"))).containsExactly("step");
        assertThat(fieldsRefused(holds.pass(job, FACE, "lead hand"))).containsExactly("step");
    }

    @Test
    void reading_takenAfterTheHoldPointWasPassed_isToBePassedAgain() {
        measured("20.05");
        done(holds.pass(job, TURN, "lead hand"));
        measured("20.06");
        assertThat(shop.file(job).progress().orElseThrow().holdPassed(TURN)).isEqualTo(Optional.empty());
        assertThat(fieldsRefused(ticks.tick(job, PART_OFF, "learner"))).containsExactly("step");
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "2, 1, 1", "1, 0, 1", "1, 4, 1", "1, 1, 0", "1, 1, 3", "-1, -1, -1"})
    void step_thatTheMethodHasNot_isRefused(int setUp, int operation, int piece) {
        StepAt at = new StepAt(setUp, operation, piece);
        assertThat(fieldsRefused(ticks.tick(job, at, "learner"))).containsExactly("step");
        assertThat(fieldsRefused(readings.note(job, new Place(at, 1), "20", "learner")))
                .containsExactly("step");
    }

    @Test
    void reading_thatTheOperationHasNot_isRefused() {
        assertThat(fieldsRefused(readings.note(job, new Place(FACE, 1), "20", "learner")))
                .containsExactly("reading");
        assertThat(fieldsRefused(readings.note(job, new Place(TURN, 0), "20", "learner")))
                .containsExactly("reading");
        assertThat(fieldsRefused(readings.note(job, new Place(TURN, 2), "20", "learner")))
                .containsExactly("reading");
    }

    @Test
    void job_notToBeMadeNow_isRefused() {
        assertThat(fieldsRefused(ticks.tick(job, FACE, " "))).containsExactly("who");
        assertThat(fieldsRefused(ticks.tick(new JobNumber(99), FACE, "learner")))
                .containsExactly("job");
        Job drawn = shop.drawn();
        assertThat(fieldsRefused(ticks.tick(drawn.number(), FACE, "learner"))).containsExactly("job");
        done(shop.desk.moveJob().move(job, Stage.STOPPED, "a bar", "lead hand"));
        assertThat(fieldsRefused(ticks.tick(job, FACE, "learner"))).containsExactly("job");
    }

    @Test
    void method_thatIsNoLongerRight_isRefused() {
        RequestAsWritten four = Shopfloor.request().with(RequestAsWritten.COUNT, "4");
        done(shop.desk.amendRequest().amend(job, four, 1, "lead hand"));
        assertThat(fieldsRefused(ticks.tick(job, FACE, "learner"))).containsExactly("job");
    }
}
