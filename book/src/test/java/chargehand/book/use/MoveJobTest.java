package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static chargehand.book.use.Shopfloor.refused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class MoveJobTest {
    private final Shopfloor shop = new Shopfloor();
    private final MoveJob move = shop.desk.moveJob();

    private Job standing(Standing standing) {
        Job job = shop.asked().with(standing);
        shop.book.enter(ledger -> ledger.jobs().replace(job));
        return job;
    }

    private static Standing at(Stage stage) {
        return stage == Stage.STOPPED ? new Standing.Stopped("a bar", Stage.READY) : new Standing.At(stage);
    }

    @ParameterizedTest
    @EnumSource
    void job_movedFromEachStageToEach_goesOnlyWhereItMay(Stage from) {
        for (Stage to : Stage.values()) {
            Job job = standing(at(from));
            if (job.standing().moves().contains(to)) {
                assertThat(done(move.move(job.number(), to, "a bolt", "lead hand"))
                                .stage())
                        .isEqualTo(to);
                Move moved = shop.file(job.number()).moves().getFirst();
                assertThat(EnumSet.of(moved.from(), moved.to())).isEqualTo(EnumSet.of(from, to));
            } else {
                assertThat(refused(move.move(job.number(), to, "a bolt", "lead hand")))
                        .singleElement()
                        .satisfies(objection -> assertThat(objection.field()).isEqualTo("stage"))
                        .satisfies(objection -> assertThat(objection.say()).contains(from.word(), to.word()));
                assertThat(shop.job(job.number())).isEqualTo(job);
            }
        }
    }

    @Test
    void job_stoppedAndGoingOn_isWhereItWas() {
        Job job = standing(new Standing.At(Stage.IN_HAND));
        Job stopped = done(move.move(job.number(), Stage.STOPPED, " gunmetal bar ", "lead hand"));
        assertThat(stopped.standing()).isEqualTo(new Standing.Stopped("gunmetal bar", Stage.IN_HAND));
        assertThat(done(move.move(job.number(), Stage.IN_HAND, "", "lead hand")).standing())
                .isEqualTo(job.standing());
        assertThat(shop.file(job.number()).moves()).extracting(Move::note).containsExactly("gunmetal bar", "");
    }

    @Test
    void job_stoppedForNothing_isRefused() {
        Job job = shop.asked();
        assertThat(fieldsRefused(move.move(job.number(), Stage.STOPPED, " ", "")))
                .containsExactlyInAnyOrder("who", "note");
        assertThat(fieldsRefused(move.move(job.number(), Stage.READY, "x".repeat(401), "lead hand")))
                .containsExactly("note");
        assertThat(fieldsRefused(move.move(new JobNumber(99), Stage.READY, "", "lead hand")))
                .containsExactly("job");
    }
}
