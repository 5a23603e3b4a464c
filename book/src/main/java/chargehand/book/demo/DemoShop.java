package chargehand.book.demo;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.method.MethodPlanner;
import chargehand.book.method.MethodRecord;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopAsWritten;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.Book;
import chargehand.book.use.Desk;
import chargehand.book.use.DrawPart;
import chargehand.book.use.MoveJob;
import chargehand.book.use.TakeRequest;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fills an empty book from a workshop's files: the shop, its kit and rack, its jobs, and a method for each that can be had. */
public final class DemoShop {
    private static final String WHO = "lead hand";

    private final Book book;
    private final Clock clock;
    private final Desk desk;

    public DemoShop(Book book, MethodPlanner planner, Clock clock) {
        this.book = book;
        this.clock = clock;
        this.desk = Desk.at(book, planner, clock);
    }

    /**
     * A filled book.
     *
     * @param jobs the numbers of its jobs, in the order of the list
     * @param ready the numbers of those for which a method was found
     */
    public record Filled(List<JobNumber> jobs, List<JobNumber> ready) {
        public Filled {
            jobs = List.copyOf(jobs);
            ready = List.copyOf(ready);
        }
    }

    /** Fills the book, or says everything that is wrong with the files and leaves it empty. */
    public Entered<Filled> fill(DemoTexts texts) {
        if (book.read(ledger -> ledger.jobs().newest()).isPresent()) {
            return Entered.refused("book", "There are jobs in this book already; the demo shop needs an empty one.");
        }
        return switch (JobList.read(texts.jobs())) {
            case JobList.Reading.Faulty faulty ->
                Entered.refused(faulty.faults().stream()
                        .map(fault -> objection(fault.line(), fault.say()))
                        .toList());
            case JobList.Reading.Read(ShopAsWritten shop, List<ListedJob> jobs) -> fill(texts, shop, jobs);
        };
    }

    private static Objection objection(int line, String say) {
        return new Objection(DemoTexts.JOBS + ", line " + line, say);
    }

    private Entered<Filled> fill(DemoTexts texts, ShopAsWritten shop, List<ListedJob> jobs) {
        var objections = new ArrayList<Objection>();
        if (shop.read(Shop.NEW) instanceof Entered.Refused<Shop> refused) {
            objections.addAll(refused.objections());
        }
        jobs.forEach(job -> objections.addAll(objections(texts, job)));
        if (!objections.isEmpty()) {
            return Entered.refused(objections);
        }
        int edition = desk.keepTexts().texts().edition();
        if (desk.keepTexts().replace(texts.shopFiles(), edition, WHO) instanceof Entered.Refused<ShopTexts> refused) {
            return Entered.refused(refused.objections());
        }
        kept(desk.keepShop().keep(shop));
        List<JobNumber> numbers = jobs.stream().map(job -> take(texts, job)).toList();
        return Entered.done(
                new Filled(numbers, numbers.stream().filter(this::isPlanned).toList()));
    }

    private List<Objection> objections(DemoTexts texts, ListedJob job) {
        var objections = new ArrayList<Objection>();
        LocalDate askedOn = LocalDate.now(job.askedBy(clock));
        if (job.request(clock).read(askedOn) instanceof Entered.Refused<Request> refused) {
            objections.addAll(refused.objections());
        }
        job.part().flatMap(name -> drawingObjection(texts, name)).ifPresent(objections::add);
        job.waitsFor().flatMap(MoveJob::objectionToWaitingFor).ifPresent(objections::add);
        return objections.stream()
                .map(objection -> objection(job.line(), objection.say()))
                .toList();
    }

    private static Optional<Objection> drawingObjection(DemoTexts texts, String name) {
        return texts.part(name)
                .map(DrawPart::objectionTo)
                .orElseGet(() -> Optional.of(new Objection("part", "There is no drawing '" + name + "'.")));
    }

    private JobNumber take(DemoTexts texts, ListedJob listed) {
        Job job = kept(new TakeRequest(book, listed.askedBy(clock)).take(listed.request(clock)));
        listed.part()
                .flatMap(texts::part)
                .ifPresent(drawing -> kept(desk.drawPart().save(job.number(), drawing, 0, WHO)));
        listed.waitsFor().ifPresent(what -> kept(desk.moveJob().move(job.number(), Stage.STOPPED, what, WHO)));
        return job.number();
    }

    /** Plans a job that is drawn; what cannot be planned stays as it is and says why on its own page. */
    private boolean isPlanned(JobNumber number) {
        boolean drawn = desk.jobs().find(number).filter(file -> file.isDrawn()).isPresent();
        return drawn
                && desk.planMethod().plan(number, WHO) instanceof Entered.Done<MethodRecord>(MethodRecord planned)
                && planned.isFound();
    }

    /** What was kept; the files were looked through before, so that nothing is refused now. */
    private static <T> T kept(Changed<T> changed) {
        return switch (changed) {
            case Entered.Done<T>(T value) -> value;
            case Entered.Refused<T> refused -> throw new IllegalStateException("refused: " + refused.objections());
            case Changed.Overtaken<T> overtaken -> throw new IllegalStateException("changed by someone else meanwhile");
        };
    }
}
