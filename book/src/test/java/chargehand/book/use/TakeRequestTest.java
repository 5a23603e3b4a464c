package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static chargehand.book.use.Shopfloor.refused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Request;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.shop.ShopAsWritten;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TakeRequestTest {
    private final Shopfloor shop = new Shopfloor();
    private final TakeRequest take = shop.desk.takeRequest();

    @Test
    void request_taken_isAJobAskedForToday() {
        Job job = done(take.take(Shopfloor.request()));
        assertThat(job)
                .isEqualTo(new Job(
                        new JobNumber(1),
                        new Request(
                                "swing bridge",
                                "locking pin bent",
                                "bridge keeper",
                                2,
                                Optional.of(LocalDate.of(2026, 3, 20))),
                        LocalDate.of(2026, 3, 2),
                        new Standing.At(Stage.ASKED_FOR),
                        1));
        assertThat(shop.job(job.number())).isEqualTo(job);
    }

    @Test
    void requests_oneAfterAnother_areNumberedFromTheShopsFirst() {
        assertThat(shop.asked().number()).isEqualTo(new JobNumber(1));
        done(shop.desk.keepShop().keep(new ShopAsWritten(Map.of(ShopAsWritten.FIRST_JOB, "201"))));
        assertThat(shop.asked().number()).isEqualTo(new JobNumber(201));
        assertThat(shop.asked().number()).isEqualTo(new JobNumber(202));
        done(shop.desk.keepShop().keep(new ShopAsWritten(Map.of(ShopAsWritten.FIRST_JOB, "5"))));
        assertThat(shop.asked().number()).isEqualTo(new JobNumber(203));
    }

    @Test
    void count_leftOut_isOne() {
        Job job = done(take.take(Shopfloor.request().with(RequestAsWritten.COUNT, " ")));
        assertThat(job.request().count()).isEqualTo(1);
    }

    @Test
    void fields_allWrong_areAllNamedAtOnce() {
        var written = new RequestAsWritten(Map.of(RequestAsWritten.COUNT, "a few", RequestAsWritten.WANTED_BY, "soon"));
        assertThat(fieldsRefused(take.take(written)))
                .containsExactly(
                        RequestAsWritten.ASSET,
                        RequestAsWritten.WANTS,
                        RequestAsWritten.ASKER,
                        RequestAsWritten.COUNT,
                        RequestAsWritten.WANTED_BY);
        assertThat(shop.desk.jobs().list(JobQuery.all()).total()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-2", "10001", "2.5", "two", "1e3", "99999999999999999999", "NaN", "٣"})
    void count_thatIsNone_isRefused(String count) {
        assertThat(refused(take.take(Shopfloor.request().with(RequestAsWritten.COUNT, count))))
                .singleElement()
                .extracting(Objection::say)
                .asString()
                .contains("from 1 to 10000", count);
    }

    @ParameterizedTest
    @ValueSource(strings = {"20/3/2026", "2026-02-30", "2026-3-5", "next week", "2026-03-01", "2126-01-01", "-1"})
    void day_thatIsNone_isRefused(String day) {
        assertThat(refused(take.take(Shopfloor.request().with(RequestAsWritten.WANTED_BY, day))))
                .singleElement()
                .extracting(Objection::say)
                .asString()
                .contains(day);
    }

    @Test
    void words_tooLongOrNotToBePrinted_areRefused() {
        assertThat(fieldsRefused(take.take(Shopfloor.request()
                        .with(RequestAsWritten.ASSET, "x".repeat(201))
                        .with(RequestAsWritten.WANTS, "bent\u0000pin")
                        .with(RequestAsWritten.ASKER, "half \ud83d pair"))))
                .containsExactly(RequestAsWritten.ASSET, RequestAsWritten.WANTS, RequestAsWritten.ASKER);
    }

    @Test
    void nonsense_inEveryField_isTakenAsItIsOrRefused() {
        Random chance = new Random(11);
        int taken = 0;
        for (int index = 0; index < 2_000; index++) {
            RequestAsWritten written = nonsense(chance);
            switch (take.take(written)) {
                case Entered.Done<Job>(Job job) -> {
                    taken++;
                    assertThat(shop.job(job.number()).request().wants())
                            .isEqualTo(written.text(RequestAsWritten.WANTS));
                }
                case Entered.Refused<Job> refused -> refused(refused);
            }
        }
        assertThat(taken).isBetween(1, 1_999);
    }

    private static RequestAsWritten nonsense(Random chance) {
        return new RequestAsWritten(Stream.of(
                        RequestAsWritten.ASSET,
                        RequestAsWritten.WANTS,
                        RequestAsWritten.ASKER,
                        RequestAsWritten.COUNT,
                        RequestAsWritten.WANTED_BY)
                .collect(Collectors.toMap(field -> field, field -> text(chance))));
    }

    private static String text(Random chance) {
        List<String> bits =
                List.of("", "7", "pin", " ", "\t", "2026-03-09", "'; drop table job; --", "é", "\u0007", "-", "🔩");
        return IntStream.range(0, chance.nextInt(3))
                .mapToObj(index -> bits.get(chance.nextInt(bits.size())))
                .collect(Collectors.joining());
    }
}
