package chargehand.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatObject;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobLine;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.JobQuery.Order;
import chargehand.book.job.Move;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.json.AnyRecord;
import chargehand.book.method.Basis;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.progress.Deed;
import chargehand.book.progress.ProgressEntry;
import chargehand.book.progress.StepAt;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopTexts;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every store of the book does alike. */
public abstract class BookContract {
    private static final LocalDate ASKED_ON = LocalDate.of(2026, 3, 2);
    private static final Signed BY = new Signed("lead hand", Instant.parse("2026-03-02T08:15:30.125Z"));
    private static final JobNumber FIRST = new JobNumber(201);

    private Book book;

    /** An empty book. */
    protected abstract Book open();

    @BeforeEach
    void openBook() {
        book = open();
    }

    @AfterEach
    void closeBook() {
        book.close();
    }

    private static Job job(int number, String asset, String wants) {
        Request request = new Request(asset, wants, "bridge keeper", 1, Optional.empty());
        return new Job(new JobNumber(number), request, ASKED_ON, new Standing.At(Stage.ASKED_FOR), 1);
    }

    private static Job wantedBy(Job job, String day) {
        Request request = job.request();
        return job.with(new Request(
                request.asset(), request.wants(), request.asker(), request.count(), Optional.of(LocalDate.parse(day))));
    }

    private void add(Job... jobs) {
        book.enter(ledger -> List.of(jobs).forEach(ledger.jobs()::add));
    }

    private void add(PartIssue issue) {
        book.enter(ledger -> ledger.parts().add(issue));
    }

    private static PartIssue drawing(int version, String text, Face face) {
        return new PartIssue(FIRST, version, text, face, BY);
    }

    private List<Integer> numbers(JobQuery query) {
        return book.read(ledger -> ledger.jobs().list(query)).lines().stream()
                .map(line -> line.job().number().number())
                .toList();
    }

    @Test
    void change_thatThrows_leavesNothing() {
        assertThatThrownBy(() -> book.enter(ledger -> {
                    ledger.jobs().add(job(201, "tug", "union leaks"));
                    ledger.shop().keep(new Shop("Kelderhaven", LengthUnit.INCH, FIRST));
                    throw new IllegalArgumentException("half-way");
                }))
                .hasMessage("half-way");
        assertThatObject(book.read(ledger -> ledger.jobs().newest())).isEqualTo(Optional.empty());
        assertThatObject(book.read(ledger -> ledger.shop().shop())).isEqualTo(Shop.NEW);
    }

    @Test
    void change_withinAChange_isRefused() {
        assertThatThrownBy(() ->
                        book.enter(ledger -> book.enter(inner -> inner.jobs().add(job(201, "tug", "leaks")))))
                .isInstanceOf(IllegalStateException.class);
        assertThatObject(book.read(ledger -> ledger.jobs().newest())).isEqualTo(Optional.empty());
    }

    @Test
    void read_whileSomeoneChanges_seesWhatWasBefore() {
        book.enter(ledger -> {
            ledger.jobs().add(job(201, "tug", "union leaks"));
            assertThatObject(book.read(other -> other.jobs().newest())).isEqualTo(Optional.empty());
        });
        assertThatObject(book.read(ledger -> ledger.jobs().newest())).isEqualTo(Optional.of(FIRST));
    }

    @Test
    void job_added_isFoundAsItWas() {
        Job job = wantedBy(job(201, "sluice Ø 2 \"old\"", "déur\r\n\tklemt 🔩"), "2026-04-01");
        add(job);
        assertThatObject(book.read(ledger -> ledger.jobs().find(FIRST))).isEqualTo(Optional.of(job));
        assertThatObject(book.read(ledger -> ledger.jobs().find(new JobNumber(202))))
                .isEqualTo(Optional.empty());
    }

    @Test
    void job_ofANumberThatIsTaken_isNotAdded() {
        add(job(201, "tug", "union leaks"));
        assertThatThrownBy(() -> add(job(201, "dredger", "pin"))).isInstanceOf(RuntimeException.class);
        assertThat(book.read(ledger -> ledger.jobs().find(FIRST))
                        .orElseThrow()
                        .request()
                        .asset())
                .isEqualTo("tug");
    }

    @Test
    void job_replaced_standsAsChanged() {
        add(job(201, "tug", "union leaks"));
        for (Stage stage : EnumSet.complementOf(EnumSet.of(Stage.STOPPED))) {
            Job moved = job(201, "tug", "union leaks").with(new Standing.At(stage));
            book.enter(ledger -> ledger.jobs().replace(moved));
            assertThatObject(book.read(ledger -> ledger.jobs().find(FIRST))).isEqualTo(Optional.of(moved));
        }
        Job stopped = wantedBy(job(201, "tug", "both unions leak"), "2026-05-01")
                .with(new Standing.Stopped("a bar of gunmetal", Stage.IN_HAND));
        book.enter(ledger -> ledger.jobs().replace(stopped));
        assertThatObject(book.read(ledger -> ledger.jobs().find(FIRST))).isEqualTo(Optional.of(stopped));
    }

    @Test
    void job_thatIsNotThere_isNotReplaced() {
        assertThatThrownBy(() -> book.enter(ledger -> ledger.jobs().replace(job(201, "tug", "union"))))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void list_byPages_holdsEachJobOnce() {
        for (int number = 201; number <= 207; number++) {
            add(job(number, "tug", "union leaks"));
        }
        JobQuery query = JobQuery.all().size(3);
        assertThat(numbers(query)).containsExactly(207, 206, 205);
        assertThat(numbers(query.page(3))).containsExactly(201);
        assertThat(numbers(query.page(4))).isEmpty();
        JobPage page = book.read(ledger -> ledger.jobs().list(query.page(2)));
        assertThat(page.total()).isEqualTo(7);
        assertThat(page.pages()).isEqualTo(3);
    }

    @Test
    void list_byDayWanted_putsThoseWithoutLast() {
        add(
                job(201, "tug", "no hurry"),
                wantedBy(job(202, "tug", "later"), "2026-06-01"),
                wantedBy(job(203, "tug", "soon"), "2026-03-05"),
                wantedBy(job(204, "tug", "soon too"), "2026-03-05"));
        assertThat(numbers(JobQuery.all().by(Order.WANTED))).containsExactly(203, 204, 202, 201);
    }

    @Test
    void list_byStages_holdsOnlyThose() {
        add(job(201, "tug", "a"), job(202, "tug", "b").with(new Standing.At(Stage.READY)));
        assertThat(numbers(JobQuery.all().in(Set.of(Stage.READY, Stage.PASSED))))
                .containsExactly(202);
        assertThat(numbers(JobQuery.all().in(Set.of()))).isEmpty();
        assertThatObject(book.read(ledger -> ledger.jobs().counts()))
                .isEqualTo(Map.of(Stage.ASKED_FOR, 1, Stage.READY, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "sluice, 201 203", "SLUI, 201 203", "slui spin, 201", "spin slui, 201", "201, 201", "20, 201 202 203",
        "deur, 202", "Déur, 202", "anschlag, 203", "ANSCHLÄG, 203", "bridge-keeper, 201 202 203", "uice, ''",
        "sluice tug, ''", "'???', 201 202 203", "'  ', 201 202 203"
    })
    void search_byWords_findsWhatBeginsWithThem(String words, String found) {
        add(
                job(201, "north sluice", "spindle bent (see sketch)"),
                job(202, "tug", "schuif-déur klemt"),
                job(203, "north sluice", "Anschläge fehlen"));
        assertThat(numbers(JobQuery.words(words)))
                .map(String::valueOf)
                .containsExactlyInAnyOrder(found.isEmpty() ? new String[0] : found.split(" "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"AND", "\"", "a OR b", "NEAR(a b)", "asset:tug", "-tug", "*", "('", "tug*", "^tug", "\u0000"})
    void search_forSignsOfAQueryLanguage_takesThemAsWords(String words) {
        add(job(201, "tug", "union leaks"));
        List<Integer> found = numbers(JobQuery.words(words));
        List<String> plain = Words.of(words).words();
        assertThat(found).isEqualTo(plain.isEmpty() || plain.equals(List.of("tug")) ? List.of(201) : List.of());
    }

    @Test
    void search_forAPart_followsItsLatestDrawing() {
        add(job(201, "tug", "leaks"));
        add(drawing(1, "…", new Face(true, "Whistle-valve union", "KH-12", "A", "gunmetal LG2")));
        assertThat(numbers(JobQuery.words("union gunmetal"))).containsExactly(201);
        assertThat(numbers(JobQuery.words("kh 12"))).containsExactly(201);
        JobLine line =
                book.read(ledger -> ledger.jobs().list(JobQuery.all())).lines().getFirst();
        assertThat(line.part()).isEqualTo("Whistle-valve union");
        assertThat(line.drawn()).isTrue();

        add(drawing(2, "… with a slip", Face.FAULTY));
        assertThat(numbers(JobQuery.words("union"))).isEmpty();
        JobLine later =
                book.read(ledger -> ledger.jobs().list(JobQuery.all())).lines().getFirst();
        assertThat(later).isEqualTo(new JobLine(job(201, "tug", "leaks"), "", false, false));
    }

    @Test
    void search_afterARequestWasChanged_findsTheNewWords() {
        add(job(201, "tug", "leaks"));
        book.enter(ledger -> ledger.jobs().replace(job(201, "dredger", "leaks")));
        assertThat(numbers(JobQuery.words("dredger"))).containsExactly(201);
        assertThat(numbers(JobQuery.words("tug"))).isEmpty();
    }

    @Test
    void moves_added_areListedInOrder() {
        add(job(201, "tug", "leaks"), job(202, "tug", "leaks"));
        Move first = new Move(FIRST, Stage.ASKED_FOR, Stage.STOPPED, "waits for a sketch", BY);
        Move second = new Move(FIRST, Stage.STOPPED, Stage.ASKED_FOR, "", BY);
        book.enter(ledger -> {
            ledger.jobs().add(first);
            ledger.jobs().add(second);
        });
        assertThatObject(book.read(ledger -> ledger.jobs().moves(FIRST))).isEqualTo(List.of(first, second));
        assertThatObject(book.read(ledger -> ledger.jobs().moves(new JobNumber(202))))
                .isEqualTo(List.of());
    }

    @Test
    void drawings_added_areKeptAsWritten() {
        add(job(201, "tug", "leaks"));
        PartIssue faulty = drawing(1, "title: [\r\n\t half", Face.FAULTY);
        PartIssue whole = drawing(2, "x".repeat(200_000), new Face(true, "Pin", "", "C2", "steel"));
        add(faulty);
        add(whole);
        assertThatObject(book.read(ledger -> ledger.parts().list(FIRST))).isEqualTo(List.of(faulty, whole));
        assertThatObject(book.read(ledger -> ledger.parts().latest(FIRST))).isEqualTo(Optional.of(whole));
        assertThatObject(book.read(ledger -> ledger.parts().latest(new JobNumber(202))))
                .isEqualTo(Optional.empty());
        assertThatThrownBy(() -> add(drawing(2, "", Face.FAULTY))).isInstanceOf(RuntimeException.class);
    }

    @Test
    void plannings_added_areKeptAsFound() {
        add(job(201, "tug", "leaks"));
        add(drawing(1, "", Face.FAULTY));
        var any = new AnyRecord(new Random(1));
        for (int number = 1; number <= 20; number++) {
            List<String> wishes = number % 2 == 0 ? List.of() : List.of("without small lathe", "with stock C2");
            Basis basis = new Basis("A", 1, 24, number, wishes);
            Finding finding = (Finding) any.of(Finding.class);
            MethodRecord planned = new MethodRecord(FIRST, number, basis, finding, BY);
            book.enter(ledger -> ledger.methods().add(planned));
            assertThatObject(book.read(ledger -> ledger.methods().latest(FIRST)))
                    .isEqualTo(Optional.of(planned));
            assertThat(book.read(ledger -> ledger.jobs().list(JobQuery.all()))
                            .lines()
                            .getFirst()
                            .planned())
                    .isEqualTo(planned.isFound());
        }
        assertThat(book.read(ledger -> ledger.methods().list(FIRST)).stream())
                .extracting(MethodRecord::number)
                .hasSize(20)
                .isSorted();
    }

    @Test
    void progress_added_isKeptInOrder() {
        add(job(201, "tug", "leaks"));
        add(drawing(1, "", Face.FAULTY));
        Finding finding = (Finding) new AnyRecord(new Random(2)).of(Finding.class);
        book.enter(ledger -> ledger.methods().add(new MethodRecord(FIRST, 1, new Basis("A", 1, 1, 0), finding, BY)));
        StepAt at = new StepAt(1, 2, 3);
        Written size = new Written(".8125\"", Length.inch(13, 16), LengthUnit.INCH);
        List<Deed> deeds = List.of(
                new Deed.Ticked(at),
                new Deed.Unticked(at),
                new Deed.Measured(at, 1, size, Optional.empty()),
                new Deed.Measured(at, 1, size, Optional.of(3)),
                new Deed.HoldPassed(at));
        for (Deed deed : deeds) {
            int number = deeds.indexOf(deed) + 1;
            book.enter(ledger -> ledger.progress().add(new ProgressEntry(FIRST, 1, number, deed, BY)));
        }
        assertThat(book.read(ledger -> ledger.progress().list(FIRST)).stream())
                .extracting(ProgressEntry::deed)
                .isEqualTo(deeds);
        assertThatThrownBy(() ->
                        book.enter(ledger -> ledger.progress().add(new ProgressEntry(FIRST, 1, 5, deeds.get(0), BY))))
                .isInstanceOf(RuntimeException.class);
    }

    @Test
    void shop_kept_isTheShop() {
        assertThatObject(book.read(ledger -> ledger.shop().shop())).isEqualTo(Shop.NEW);
        for (LengthUnit unit : LengthUnit.values()) {
            Shop shop = new Shop("Kelderhaven " + unit, unit, FIRST);
            book.enter(ledger -> ledger.shop().keep(shop));
            assertThatObject(book.read(ledger -> ledger.shop().shop())).isEqualTo(shop);
        }
    }

    @Test
    void texts_added_areKeptEditionByEdition() {
        assertThatObject(book.read(ledger -> ledger.shop().texts())).isEqualTo(ShopTexts.NONE);
        ShopTexts first = new ShopTexts(1, Map.of("rack.yaml", "bars: []\n", "kit/lathe.yaml", "swing: 13 in"));
        ShopTexts second = new ShopTexts(2, Map.of());
        book.enter(ledger -> ledger.shop().add(first, BY));
        book.enter(ledger -> ledger.shop().add(second, BY));
        assertThatObject(book.read(ledger -> ledger.shop().texts())).isEqualTo(second);
        assertThatObject(book.read(ledger -> ledger.shop().texts(1))).isEqualTo(Optional.of(first));
        assertThatObject(book.read(ledger -> ledger.shop().texts(0))).isEqualTo(Optional.of(ShopTexts.NONE));
        assertThatObject(book.read(ledger -> ledger.shop().texts(3))).isEqualTo(Optional.empty());
        assertThatThrownBy(() -> book.enter(ledger -> ledger.shop().add(second, BY)))
                .isInstanceOf(RuntimeException.class);
    }
}
