package chargehand.web.method;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.use.JobFile;
import chargehand.book.use.JobFile.Lag;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.web.job.Days;
import chargehand.web.job.Grounds;
import chargehand.web.job.Station;
import chargehand.web.job.Traveller;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Hand;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import chargehand.web.serving.Why;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How a job's part is made here, and why so; or why it cannot be, and what would make it possible. */
public final class MethodPage implements Pages {
    private static final String LEAF = "method";
    private static final String LOOK = "look";
    private static final String WHY_NOT = "why-not";
    private static final String OTHERS = "others";

    private final Counter counter;
    private final Views views;
    private final Replays replays;

    public MethodPage(Replays replays, Views views) {
        this.counter = replays.counter();
        this.replays = replays;
        this.views = views;
    }

    /**
     * The page.
     *
     * @param drawn whether there is a drawing to plan from
     * @param planned whether planning was ever asked for
     * @param plannedBy who asked and when
     * @param grounds what the method rests on; none when there is no method
     * @param reasons why there is none
     * @param stale what has changed since, in words; empty when nothing has
     * @param objections why planning was not done
     * @param asked what is asked of the method beside the part
     * @param looked the ways not taken, where somebody asked
     * @param estimate what it comes to for a customer outside
     */
    public record Sheet(
            Frame frame,
            Traveller traveller,
            boolean drawn,
            boolean planned,
            String plannedBy,
            List<Why> grounds,
            List<Method.PassedOver> passedOver,
            List<SetUpFace> setUps,
            List<String> cautions,
            List<Planned.Reason> reasons,
            String stale,
            List<String> objections,
            Asked asked,
            Looked looked,
            Optional<EstimateFace> estimate) {
        public boolean isFound() {
            return !setUps.isEmpty();
        }
    }

    /**
     * The ways not taken.
     *
     * @param at what was asked for: {@code why-not}, {@code others} or nothing
     */
    public record Looked(String at, List<NotTakenFace> notTaken, List<OtherFace> others) {
        static final Looked NOWHERE = new Looked("", List.of(), List.of());
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/method", this::show);
        routes.post("/jobs/{job}/method", this::plan);
        routes.get("/jobs/{job}/sheet.pdf", this::print);
    }

    private void show(Context context) {
        JobFile file = counter.job(context);
        views.show(context, LEAF, sheet(file, List.of(), looked(file, context.queryParam(LOOK))));
    }

    private Looked looked(JobFile file, @Nullable String at) {
        if (at == null) {
            return Looked.NOWHERE;
        }
        return file.planned()
                .flatMap(planned -> SecondLook.at(counter, planned))
                .map(second -> switch (at) {
                    case WHY_NOT -> new Looked(at, second.whyNot(), List.of());
                    case OTHERS -> new Looked(at, List.of(), second.others());
                    default -> Looked.NOWHERE;
                })
                .orElse(Looked.NOWHERE);
    }

    /** Works a method out; with {@code asking}, within what the form says from now on, else within what was asked before. */
    private Entered<MethodRecord> planned(Context context, JobFile file) {
        String who = Hand.of(context);
        if (context.formParam("asking") == null) {
            return counter.desk().planMethod().plan(file.job().number(), who);
        }
        List<String> wishes = context.formParams("wish").stream()
                .map(String::strip)
                .filter(wish -> !wish.isEmpty())
                .distinct()
                .toList();
        return counter.desk().planMethod().plan(file.job().number(), wishes, who);
    }

    private void plan(Context context) {
        JobFile file = counter.job(context);
        switch (planned(context, file)) {
            case Entered.Done<MethodRecord> done ->
                context.redirect("/jobs/" + file.job().number() + "/method", HttpStatus.SEE_OTHER);
            case Entered.Refused<MethodRecord> refused ->
                views.showRefused(
                        context,
                        LEAF,
                        sheet(
                                file,
                                refused.objections().stream()
                                        .map(MethodPage::say)
                                        .toList(),
                                Looked.NOWHERE));
        }
    }

    /** An objection to the kit names the file and the place in it, which must be said too. */
    private static String say(Objection objection) {
        return objection.field().contains(".yaml") ? objection.field() + ": " + objection.say() : objection.say();
    }

    private Sheet sheet(JobFile file, List<String> objections, Looked looked) {
        Optional<MethodRecord> planned = file.planned();
        Optional<Method> method = planned.flatMap(MethodRecord::method);
        return new Sheet(
                counter.frame("Method of job " + file.job().number(), Section.JOBS),
                Traveller.of(file, Station.Name.METHOD),
                file.isDrawn(),
                planned.isPresent(),
                planned.map(MethodPage::plannedBy).orElse(""),
                planned.map(Grounds::of).orElse(List.of()),
                method.map(found -> found.stock().passedOver()).orElse(List.of()),
                planned.map(record -> SetUpFace.all(replays, record)).orElse(List.of()),
                method.map(Method::cautions).orElse(List.of()),
                planned.map(MethodPage::reasons).orElse(List.of()),
                stale(file),
                objections,
                Asked.of(file),
                looked,
                planned.flatMap(replays::estimate));
    }

    private static String plannedBy(MethodRecord planned) {
        return "Worked out for issue " + planned.basis().issue() + ", asked for by "
                + planned.by().who() + ", " + Days.say(planned.by().at());
    }

    private static List<Planned.Reason> reasons(MethodRecord planned) {
        return switch (planned.finding()) {
            case Finding.Found found -> List.of();
            case Finding.NotHere notHere -> notHere.reasons();
        };
    }

    private static String stale(JobFile file) {
        if (file.planned().isEmpty() || file.lags().isEmpty()) {
            return "";
        }
        if (file.lags().contains(Lag.DRAWING)) {
            return "The drawing has changed since this was worked out.";
        }
        return file.lags().contains(Lag.COUNT)
                ? "The count has changed since this was worked out."
                : "The kit or the rack has changed since this was worked out; it may still hold.";
    }

    private void print(Context context) throws IOException {
        JobFile file = counter.job(context);
        MethodRecord planned = file.planned()
                .filter(MethodRecord::isFound)
                .orElseThrow(() -> new NotFoundResponse("Job " + file.job().number() + " has no method to print yet."));
        var pdf = new ByteArrayOutputStream();
        new PrintedSheet(replays, planned).write(pdf, "http://" + context.host());
        context.header(
                "Content-Disposition", "inline; filename=\"job-" + file.job().number() + "-method.pdf\"");
        context.contentType("application/pdf").result(pdf.toByteArray());
    }
}
