package chargehand.book.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.demo.DemoShop.Filled;
import chargehand.book.job.Job;
import chargehand.book.job.JobLine;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Stage;
import chargehand.book.memory.MemoryBook;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodPlanner;
import chargehand.book.shop.Shop;
import chargehand.book.store.Book;
import chargehand.book.use.JobBook;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The workshop that is shipped as an example, read from its own files. */
final class DemoShopTest {
    private static final Path FOLDER = Path.of("..", "demo");
    private static final int JOBS = 12;
    private static final int DRAWN = 12;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);
    private static final MethodPlanner NOT_HERE = (part, count, wishes, texts) ->
            new Finding.NotHere(List.of(new Reason(Code.NO_MACHINE, "There is no lathe.", "A lathe.")));

    private final Book book = new MemoryBook();
    private final DemoShop demo = new DemoShop(book, NOT_HERE, CLOCK);

    private static DemoTexts shipped() throws IOException {
        return new DemoTexts(
                Files.readString(FOLDER.resolve("jobs.yaml")),
                texts("parts"),
                texts("kit"),
                Files.readString(FOLDER.resolve("rack.yaml")));
    }

    private static Map<String, String> texts(String folder) throws IOException {
        try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .collect(Collectors.toMap(file -> file.getFileName().toString(), DemoShopTest::text));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<Objection> objections(Entered<Filled> entered) {
        return switch (entered) {
            case Entered.Done<Filled> done -> fail("filled: " + done.value());
            case Entered.Refused<Filled> refused -> refused.objections();
        };
    }

    @Test
    void book_filledAsShipped_holdsTheTwelveJobs() throws IOException {
        assertThat(demo.fill(shipped())).isInstanceOf(Entered.Done.class);
        List<JobLine> lines = new JobBook(book).list(JobQuery.all()).lines();
        assertThat(lines).hasSize(JOBS);
        assertThat(lines).filteredOn(JobLine::drawn).hasSize(DRAWN);
        assertThat(book.read(ledger -> ledger.shop().shop())
                        .equals(new Shop("Kelderhaven harbour workshop", LengthUnit.MILLIMETRE, new JobNumber(201))))
                .isTrue();
        assertThat(book.read(ledger -> ledger.shop().texts()).files())
                .hasSizeGreaterThan(2)
                .containsKey("rack.yaml");
    }

    @Test
    void job_filledAsShipped_isOfThisWeek() throws IOException {
        demo.fill(shipped());
        Job union = book.read(ledger -> ledger.jobs().find(new JobNumber(202))).orElseThrow();
        assertThat(union.askedOn()).isEqualTo(LocalDate.of(2026, 2, 26));
        assertThat(union.request().wantedBy()).contains(LocalDate.of(2026, 3, 5));
        assertThat(union.request().wants()).startsWith("The union between").doesNotContain("\n");
        Job studs = book.read(ledger -> ledger.jobs().find(new JobNumber(203))).orElseThrow();
        assertThat(studs.request().count()).isEqualTo(24);
        Job pinion = book.read(ledger -> ledger.jobs().find(new JobNumber(204))).orElseThrow();
        assertThat(pinion.stage()).isEqualTo(Stage.STOPPED);
    }

    @Test
    void book_withJobsInIt_isLeftAlone() throws IOException {
        demo.fill(shipped());
        assertThat(objections(demo.fill(shipped())))
                .extracting(Objection::field)
                .containsExactly("book");
        assertThat(new JobBook(book).list(JobQuery.all()).total()).isEqualTo(JOBS);
    }

    @Test
    void files_withNothingInThem_areRefusedAndNothingKept() throws IOException {
        DemoTexts texts = shipped();
        DemoTexts noRack = new DemoTexts(texts.jobs(), texts.parts(), texts.kit(), " ");
        assertThat(objections(demo.fill(noRack))).extracting(Objection::field).containsExactly("rack.yaml");
        DemoTexts noParts = new DemoTexts(texts.jobs(), Map.of("union.yaml", ""), texts.kit(), texts.rack());
        assertThat(objections(demo.fill(noParts)))
                .hasSize(DRAWN)
                .extracting(Objection::say)
                .contains("The drawing is missing.", "There is no drawing 'shim'.");
        assertThat(new JobBook(book).list(JobQuery.all()).total()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "first-job: 201        | first-job: none       | firstJob",
                "unit: mm              | unit: ell             | unit",
                "asset: North sluice   | asset:                | jobs.yaml, line 7",
                "asked: 9 days ago     | asked: last week      | jobs.yaml, line 13",
                "wanted: in 19 days    | wanted: soon          | jobs.yaml, line 14",
                "part: sluice-spindle  | part: sluice          | jobs.yaml, line 7",
                "count: 24             | count: two dozen      | jobs.yaml, line 26",
                "shop: Kelderhaven     | shop: [Kelderhaven    | jobs.yaml, line 4",
                "asset: Harbour light  | asset: x, colour: red | jobs.yaml",
            })
    void file_withASlip_isRefusedWithItsPlaceAndNothingKept(String right, String wrong, String field)
            throws IOException {
        DemoTexts texts = shipped();
        assertThat(texts.jobs()).contains(right);
        DemoTexts slip = new DemoTexts(texts.jobs().replace(right, wrong), texts.parts(), texts.kit(), texts.rack());
        assertThat(objections(demo.fill(slip))).first().satisfies(objection -> {
            assertThat(objection.field()).startsWith(field);
            assertThat(objection.say()).isNotBlank();
        });
        assertThat(new JobBook(book).list(JobQuery.all()).total()).isZero();
        assertThat(book.read(ledger -> ledger.shop().shop()).equals(Shop.NEW)).isTrue();
    }

    @Test
    void files_withSlipsByChance_areFilledInOrRefused() throws IOException {
        DemoTexts texts = shipped();
        Random chance = new Random(8);
        int filled = 0;
        for (int index = 0; index < 200; index++) {
            DemoTexts slip = new DemoTexts(mutated(texts.jobs(), chance), texts.parts(), texts.kit(), texts.rack());
            switch (new DemoShop(new MemoryBook(), NOT_HERE, CLOCK).fill(slip)) {
                case Entered.Done<Filled> done -> filled++;
                case Entered.Refused<Filled> refused ->
                    assertThat(refused.objections())
                            .allSatisfy(objection -> assertThat(objection.say()).endsWith("."));
            }
        }
        assertThat(filled).isBetween(1, 199);
    }

    /** One stretch of the text taken out, doubled, or written over. */
    private static String mutated(String text, Random chance) {
        int from = chance.nextInt(text.length());
        int to = Math.min(text.length(), from + chance.nextInt(600));
        List<String> instead =
                List.of("", text.substring(from, to).repeat(2), ": ", "\n", "\t- [", "9".repeat(500), "\u0000");
        return text.substring(0, from) + instead.get(chance.nextInt(instead.size())) + text.substring(to);
    }
}
