package chargehand.web.job;

import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.Stage;
import chargehand.book.part.DrawnPart;
import chargehand.book.use.JobFile;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Form;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Hand;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Sketches;
import chargehand.web.serving.Views;
import chargehand.web.serving.Why;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;

/** A job: its line from request to door, what comes next, and what that rests on. */
public final class JobPage implements Pages {
    private final Counter counter;
    private final Views views;
    private final Sketches sketches;

    public JobPage(Counter counter, Views views, Sketches sketches) {
        this.counter = counter;
        this.views = views;
        this.sketches = sketches;
    }

    /**
     * The page.
     *
     * @param next the key that goes on; empty when nothing is left to do
     * @param wants the request in the asker's words
     * @param drawing the drawing as an SVG element, empty before there is one
     * @param cautions what to mind throughout
     * @param moves where it may be put by hand
     * @param history what has become of it so far, newest first
     */
    public record Card(
            Frame frame,
            Traveller traveller,
            Optional<NextKey> next,
            String wants,
            String drawing,
            List<Why> grounds,
            List<String> cautions,
            List<Stage> moves,
            List<Past> history,
            boolean planned,
            Form form) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}", context -> views.show(context, "job", card(counter.job(context), Form.EMPTY)));
        routes.post("/jobs/{job}/move", this::move);
    }

    private Card card(JobFile file, Form form) {
        return new Card(
                counter.frame("Job " + file.job().number(), Section.JOBS),
                Traveller.of(file, Optional.empty()),
                NextKey.of(file),
                file.job().request().wants(),
                file.part().flatMap(DrawnPart::part).map(sketches::of).orElse(""),
                file.planned().map(Grounds::of).orElse(List.of()),
                file.progress().map(progress -> progress.method().cautions()).orElse(List.of()),
                file.job().standing().moves().stream().sorted().toList(),
                file.moves().reversed().stream().map(Past::of).toList(),
                file.progress().isPresent(),
                form);
    }

    private void move(Context context) {
        JobFile file = counter.job(context);
        Form form = Form.of(context);
        Optional<Stage> to = Stage.parse(form.value("to"));
        Entered<Job> moved = to.map(stage ->
                        counter.desk().moveJob().move(file.job().number(), stage, form.value("note"), Hand.of(context)))
                .orElseGet(() -> Entered.refused("stage", "Say where the job is to be put."));
        switch (moved) {
            case Entered.Done<Job>(Job job) -> context.redirect("/jobs/" + job.number(), HttpStatus.SEE_OTHER);
            case Entered.Refused<Job> refused ->
                views.showRefused(context, "job", card(file, form.refused(refused.objections())));
        }
    }
}
