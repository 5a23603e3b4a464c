package chargehand.book.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.memory.MemoryBook;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.Book;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/** A shop with a rack, its clock standing still, and what tests do with it over and over. */
final class Shopfloor {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:15:00Z"), ZoneOffset.UTC);
    static final String PIN = pin("A", 50);

    final Book book;
    final Desk desk;

    Shopfloor(Book book) {
        this.book = book;
        this.desk = Desk.at(book, new PinPlanner(), CLOCK);
        done(desk.keepTexts().replace(Map.of(ShopTexts.RACK, "a bar"), 0, "lead hand"));
    }

    Shopfloor() {
        this(new MemoryBook());
    }

    /** The drawing of a plain pin so long (mm). */
    static String pin(String issue, int length) {
        return """
                part: Locking pin
                issue: ISSUE
                unit: mm
                material: bright mild steel
                general: ±0.1
                outside:
                  - round: 20
                    length: LENGTH
                """.replace("ISSUE", issue).replace("LENGTH", Integer.toString(length));
    }

    static RequestAsWritten request() {
        return new RequestAsWritten(Map.of(
                RequestAsWritten.ASSET, "swing bridge",
                RequestAsWritten.WANTS, "locking pin bent",
                RequestAsWritten.ASKER, "bridge keeper",
                RequestAsWritten.COUNT, "2",
                RequestAsWritten.WANTED_BY, "2026-03-20"));
    }

    /** A job just asked for. */
    Job asked() {
        return done(desk.takeRequest().take(request()));
    }

    /** A job with a drawn pin. */
    Job drawn() {
        Job job = asked();
        done(desk.drawPart().save(job.number(), PIN, 0, "lead hand"));
        return job(job.number());
    }

    /** A job with a pin and its method. */
    Job ready() {
        Job job = drawn();
        done(desk.planMethod().plan(job.number(), "lead hand"));
        return job(job.number());
    }

    Job job(JobNumber number) {
        return file(number).job();
    }

    JobFile file(JobNumber number) {
        return desk.jobs().find(number).orElseThrow();
    }

    /** What was kept; fails when nothing was. */
    static <T> T done(Changed<T> changed) {
        return switch (changed) {
            case Entered.Done<T>(T value) -> value;
            case Entered.Refused<T> refused -> fail("refused: " + refused.objections());
            case Changed.Overtaken<T> overtaken -> fail("overtaken by " + overtaken.now());
        };
    }

    /** The objections; fails when there are none, or when one is not a sentence about a field. */
    static List<Objection> refused(Changed<?> changed) {
        assertThat(changed).isInstanceOf(Entered.Refused.class);
        List<Objection> objections = ((Entered.Refused<?>) changed).objections();
        assertThat(objections).allSatisfy(objection -> {
            assertThat(objection.field()).isNotBlank();
            assertThat(objection.say()).matches("[A-Z0-9'].*\\.").doesNotContainIgnoringCase("invalid");
        });
        return objections;
    }

    /** The fields objected to. */
    static List<String> fieldsRefused(Changed<?> changed) {
        return refused(changed).stream().map(Objection::field).toList();
    }
}
