package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Changed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Move;
import chargehand.book.job.RequestAsWritten;
import org.junit.jupiter.api.Test;

final class AmendRequestTest {
    private final Shopfloor shop = new Shopfloor();
    private final AmendRequest amend = shop.desk.amendRequest();
    private final Job asked = shop.asked();
    private final RequestAsWritten four = Shopfloor.request().with(RequestAsWritten.COUNT, "4");

    @Test
    void request_amended_saysWhatItWasBefore() {
        Job amended = done(amend.amend(asked.number(), four, 1, "lead hand"));
        assertThat(amended.request().count()).isEqualTo(4);
        assertThat(amended.version()).isEqualTo(2);
        assertThat(shop.file(asked.number()).moves())
                .extracting(Move::note)
                .containsExactly("request changed: count was '2'");
    }

    @Test
    void request_amendedByTwo_keepsTheFirstAndShowsItToTheSecond() {
        Job first = done(amend.amend(asked.number(), four, 1, "lead hand"));
        RequestAsWritten six = Shopfloor.request().with(RequestAsWritten.COUNT, "6");
        assertThat(amend.amend(asked.number(), six, 1, "helper")).isEqualTo(new Changed.Overtaken<>(first));
        assertThat(shop.job(asked.number())).isEqualTo(first);
    }

    @Test
    void request_amendedToTheSame_changesNothing() {
        assertThat(done(amend.amend(asked.number(), Shopfloor.request(), 1, "lead hand")))
                .isEqualTo(asked);
        assertThat(shop.file(asked.number()).moves()).isEmpty();
    }

    @Test
    void request_amendedWrongly_isRefused() {
        RequestAsWritten none = Shopfloor.request().with(RequestAsWritten.COUNT, "0");
        assertThat(fieldsRefused(amend.amend(asked.number(), none, 1, "lead hand")))
                .containsExactly("count");
        assertThat(fieldsRefused(amend.amend(asked.number(), four, 1, " "))).containsExactly("who");
        assertThat(fieldsRefused(amend.amend(new JobNumber(99), four, 1, "lead hand")))
                .containsExactly("job");
        assertThat(shop.job(asked.number())).isEqualTo(asked);
    }
}
