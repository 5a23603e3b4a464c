package chargehand.web.machine;

import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.Stage;
import chargehand.book.progress.Progress;
import chargehand.book.progress.Verdict;
import chargehand.book.use.JobFile;
import chargehand.book.use.NoteReading;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.method.plan.Reading;
import chargehand.web.job.Station;
import chargehand.web.job.Traveller;
import chargehand.web.method.Replays;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Form;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Hand;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;

/** At the machine: one operation at a time, with what to set, what to read, and a key to go on. */
public final class MachinePage implements Pages {
    private static final String STEP = "/jobs/{job}/machine/{setUp}/{operation}/{piece}";

    private final Counter counter;
    private final Views views;
    private final Replays replays;

    public MachinePage(Replays replays, Views views) {
        this.counter = replays.counter();
        this.replays = replays;
        this.views = views;
    }

    /** Where nothing is to be done at a machine: no method yet, or everything done. */
    public record Rest(Frame frame, Traveller traveller, boolean made, boolean provable) {}

    /** What is wrong, to be told. */
    public record Trouble(Frame frame, String address, String operation, Form form) {}

    /**
     * How a reading lies, while it is typed.
     *
     * @param in whether it lies within the limits
     * @param say the reading in both units and how it lies, or why it cannot be read; empty while nothing is typed
     */
    public record Judged(boolean in, String say) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/machine", this::goTo);
        routes.get(STEP, context -> show(context, Form.EMPTY));
        routes.post(STEP + "/done", this::tick);
        routes.post(STEP + "/undo", this::untick);
        routes.get(STEP + "/judge/{reading}", this::judge);
        routes.post(STEP + "/reading/{reading}", this::note);
        routes.post(STEP + "/pass", this::pass);
        routes.get(STEP + "/wrong", context -> views.show(context, "wrong", trouble(context, Form.EMPTY)));
        routes.post(STEP + "/wrong", this::stop);
        routes.post(STEP + "/hand", this::hand);
    }

    private void goTo(Context context) {
        JobFile file = counter.job(context);
        String job = "/jobs/" + file.job().number();
        file.progress()
                .flatMap(Progress::next)
                .ifPresentOrElse(
                        at -> context.redirect(
                                job + "/machine/" + at.setUp() + "/" + at.operation() + "/" + at.piece(),
                                HttpStatus.SEE_OTHER),
                        () -> views.show(context, "rest", rest(file)));
    }

    private Rest rest(JobFile file) {
        return new Rest(
                counter.frame("In hand, job " + file.job().number(), Section.JOBS),
                Traveller.of(file, Station.Name.IN_HAND),
                file.progress().isPresent(),
                file.job().stage() == Stage.IN_HAND);
    }

    private void show(Context context, Form form) {
        Bench bench = Bench.of(counter, context);
        BenchSheet sheet = BenchSheet.of(replays, bench, Hand.of(context), form);
        if (form.isRefused()) {
            views.showRefused(context, "machine", sheet);
        } else {
            views.show(context, "machine", sheet);
        }
    }

    private void tick(Context context) {
        Bench bench = Bench.of(counter, context);
        var ticked = counter.desk().tickOperation().tick(bench.file().job().number(), bench.at(), Hand.of(context));
        boolean stays = bench.operation().hold()
                && bench.progress().holdPassed(bench.at()).isEmpty();
        end(context, ticked, stays ? bench.address() : bench.after());
    }

    private void untick(Context context) {
        Bench bench = Bench.of(counter, context);
        end(
                context,
                counter.desk().tickOperation().untick(bench.file().job().number(), bench.at(), Hand.of(context)),
                bench.address());
    }

    private void note(Context context) {
        Bench bench = Bench.of(counter, context);
        var place = new NoteReading.Place(bench.at(), reading(context));
        String size = Form.of(context).value("size");
        end(
                context,
                counter.desk().noteReading().note(bench.file().job().number(), place, size, Hand.of(context)),
                bench.address() + "#readings");
    }

    private void pass(Context context) {
        Bench bench = Bench.of(counter, context);
        String who = Form.of(context).value("who");
        end(
                context,
                counter.desk().passHold().pass(bench.file().job().number(), bench.at(), who),
                bench.address() + "#hold");
    }

    private void end(Context context, Entered<Progress> entered, String on) {
        switch (entered) {
            case Entered.Done<Progress> done -> context.redirect(on, HttpStatus.SEE_OTHER);
            case Entered.Refused<Progress> refused ->
                show(context, Form.of(context).refused(refused.objections()));
        }
    }

    private static int reading(Context context) {
        String written = context.pathParam("reading");
        return written.matches("[0-9]{1,3}") ? Integer.parseInt(written) : 0;
    }

    /** A piece of the page, sent again while a reading is typed. */
    private void judge(Context context) {
        Bench bench = Bench.of(counter, context);
        int number = reading(context);
        if (number < 1 || number > bench.operation().readings().size()) {
            throw new NotFoundResponse("There is no such reading.");
        }
        String size = context.queryParam("size");
        Reading wanted = bench.operation().readings().get(number - 1);
        views.show(
                context,
                "judged",
                judged(
                        wanted,
                        size == null ? "" : size.strip(),
                        bench.operation().settings().unit()));
    }

    private static Judged judged(Reading wanted, String size, LengthUnit unit) {
        if (size.isEmpty()) {
            return new Judged(true, "");
        }
        try {
            Written written = LengthReader.read(size, unit);
            Verdict verdict = Verdict.of(written.length(), wanted.limits());
            return new Judged(
                    verdict == Verdict.IN, LengthText.both(written.length(), unit) + " is " + verdict.word() + ".");
        } catch (Unreadable unreadable) {
            return new Judged(false, unreadable.say());
        }
    }

    private Trouble trouble(Context context, Form form) {
        Bench bench = Bench.of(counter, context);
        return new Trouble(
                counter.frame("Something is wrong, job " + bench.file().job().number(), Section.JOBS),
                bench.address(),
                "Set-up " + bench.at().setUp() + ", operation " + bench.at().operation() + ": "
                        + bench.operation().say(),
                form);
    }

    private void stop(Context context) {
        Bench bench = Bench.of(counter, context);
        Form form = Form.of(context);
        Entered<Job> stopped = counter.desk()
                .moveJob()
                .move(bench.file().job().number(), Stage.STOPPED, form.value("note"), Hand.of(context));
        switch (stopped) {
            case Entered.Done<Job> done -> context.redirect(bench.job(), HttpStatus.SEE_OTHER);
            case Entered.Refused<Job> refused ->
                views.showRefused(context, "wrong", trouble(context, form.refused(refused.objections())));
        }
    }

    private void hand(Context context) {
        Bench bench = Bench.of(counter, context);
        Hand.remember(context, Form.of(context).value("who"));
        context.redirect(bench.address(), HttpStatus.SEE_OTHER);
    }
}
