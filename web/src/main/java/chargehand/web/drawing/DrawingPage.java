package chargehand.web.drawing;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.part.DrawnPart;
import chargehand.book.part.PartIssue;
import chargehand.book.use.JobFile;
import chargehand.web.job.Days;
import chargehand.web.job.Station;
import chargehand.web.job.Traveller;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Form;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Hand;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Sketches;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The part's file beside its drawing, which follows while one writes. */
public final class DrawingPage implements Pages {
    private static final String LEAF = "drawing";
    private static final String TEXT = "text";

    private final Counter counter;
    private final Views views;
    private final Sketches sketches;

    public DrawingPage(Counter counter, Views views, Sketches sketches) {
        this.counter = counter;
        this.views = views;
        this.sketches = sketches;
    }

    /** A file to start from. */
    public record Start(String label, String address) {}

    /** What someone else saved meanwhile. */
    public record Theirs(String text, String who, String when) {}

    /**
     * The page.
     *
     * @param text as it stands in the field
     * @param basedOn the version it was written on, 0 where there is none
     * @param seen the drawing or what is wrong with the text
     * @param savedBy who saved what is shown and when; empty where it is not saved
     * @param objections why it was not kept
     */
    public record Sheet(
            Frame frame,
            Traveller traveller,
            String text,
            int basedOn,
            Seen seen,
            String savedBy,
            List<String> objections,
            Optional<Theirs> theirs,
            List<Start> starts) {
        Sheet with(List<Lengths.Clash> clashes, Lengths.Ends asked) {
            return new Sheet(
                    frame, traveller, text, basedOn, seen.with(clashes, asked), savedBy, objections, theirs, starts);
        }
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/drawing", this::show);
        routes.post("/jobs/{job}/drawing", this::save);
        routes.post("/jobs/{job}/drawing/look", this::look);
    }

    private void show(Context context) {
        JobFile file = counter.job(context);
        Optional<DrawnPart> drawn = file.part();
        String start = context.queryParam("start");
        String text = drawn.map(DrawnPart::issue)
                .map(PartIssue::text)
                .orElseGet(() -> Starts.of(start == null ? "" : start).text(file.job()));
        views.show(context, LEAF, sheet(file, new Draft(text, version(drawn), List.of(), Optional.empty())));
    }

    private static int version(Optional<DrawnPart> drawn) {
        return drawn.map(DrawnPart::issue).map(PartIssue::version).orElse(0);
    }

    /** The live drawing: a piece of the page, sent again while one writes. */
    private void look(Context context) {
        String address = "/jobs/" + Counter.number(context);
        views.show(context, "seen", Seen.of(text(Form.of(context)), sketches, address));
    }

    private void save(Context context) {
        save(context, text(Form.of(context)));
    }

    /** What stands in the field for the part's file; browsers send line ends as two characters, the file keeps one. */
    static String text(Form form) {
        return form.value(TEXT).replace("\r\n", "\n");
    }

    private static int basedOn(Context context) {
        String based = Form.of(context).value("basedOn");
        return based.matches("[0-9]{1,9}") ? Integer.parseInt(based) : 0;
    }

    /** Shows the page as it was sent, with why nothing was changed and what of its lengths cannot be. */
    void refuse(Context context, List<String> objections, List<Lengths.Clash> clashes) {
        Draft draft = new Draft(text(Form.of(context)), basedOn(context), objections, Optional.empty());
        Form form = Form.of(context);
        Lengths.Ends asked = new Lengths.Ends(form.value("from"), form.value("to"));
        views.showRefused(context, LEAF, sheet(counter.job(context), draft).with(clashes, asked));
    }

    /** Saves a text as that of the page that was sent. */
    void save(Context context, String text) {
        JobFile file = counter.job(context);
        int basedOn = basedOn(context);
        switch (counter.desk().drawPart().save(file.job().number(), text, basedOn, Hand.of(context))) {
            case Entered.Done<DrawnPart>(DrawnPart drawn) -> saved(context, file);
            case Entered.Refused<DrawnPart> refused ->
                views.showRefused(
                        context, LEAF, sheet(file, new Draft(text, basedOn, sayings(refused), Optional.empty())));
            case Changed.Overtaken<DrawnPart>(DrawnPart now) ->
                views.showRefused(context, LEAF, sheet(file, overtaken(text, now.issue())));
        }
    }

    private static List<String> sayings(Entered.Refused<DrawnPart> refused) {
        return refused.objections().stream().map(Objection::say).toList();
    }

    private static void saved(Context context, JobFile file) {
        context.redirect("/jobs/" + file.job().number() + "/drawing", HttpStatus.SEE_OTHER);
    }

    private static Draft overtaken(String text, PartIssue now) {
        return new Draft(
                text,
                now.version(),
                List.of(
                        "Someone else saved this drawing meanwhile. Yours is below and not kept yet, theirs is beside it."
                                + " Bring over what is wanted and save again."),
                Optional.of(
                        new Theirs(now.text(), now.by().who(), Days.say(now.by().at()))));
    }

    private record Draft(String text, int basedOn, List<String> objections, Optional<Theirs> theirs) {}

    private Sheet sheet(JobFile file, Draft draft) {
        Traveller traveller = Traveller.of(file, Station.Name.DRAWN);
        String savedBy = file.part()
                .map(DrawnPart::issue)
                .filter(issue -> issue.text().equals(draft.text()))
                .map(issue -> "Saved by " + issue.by().who() + ", "
                        + Days.say(issue.by().at()))
                .orElse("");
        return new Sheet(
                counter.frame("Drawing of job " + file.job().number(), Section.JOBS),
                traveller,
                draft.text(),
                draft.basedOn(),
                Seen.of(draft.text(), sketches, traveller.address()),
                savedBy,
                draft.objections(),
                draft.theirs(),
                draft.basedOn() == 0 ? starts(traveller) : List.of());
    }

    private static List<Start> starts(Traveller traveller) {
        return Arrays.stream(Starts.values())
                .map(start -> new Start(start.label(), traveller.address() + "/drawing?start=" + start.word()))
                .toList();
    }
}
