package chargehand.web.job;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.use.JobFile;
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
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/** A new request, and one put right. */
public final class RequestPages implements Pages {
    private static final String LEAF = "request";
    private static final String VERSION = "version";
    private static final List<String> FIELDS = List.of(
            RequestAsWritten.ASSET,
            RequestAsWritten.WANTS,
            RequestAsWritten.ASKER,
            RequestAsWritten.COUNT,
            RequestAsWritten.WANTED_BY);

    private final Counter counter;
    private final Views views;

    public RequestPages(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
    }

    /**
     * A request to be filled in.
     *
     * @param traveller the job it belongs to; empty for a new one
     * @param address where it is sent
     * @param version of the request that was in front of the person, 0 for a new one
     * @param elsewhere what is objected to and belongs to no field
     */
    public record Sheet(
            Frame frame,
            Optional<Traveller> traveller,
            String address,
            int version,
            Form form,
            List<String> elsewhere) {
        public boolean isNew() {
            return traveller.isEmpty();
        }
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/new", context -> views.show(context, LEAF, blank(Form.EMPTY)));
        routes.post("/jobs", this::take);
        routes.get("/jobs/{job}/request", this::show);
        routes.post("/jobs/{job}/request", this::amend);
    }

    private Sheet blank(Form form) {
        return new Sheet(
                counter.frame("New job", Section.NEW_JOB), Optional.empty(), "/jobs", 0, form, form.elsewhere(FIELDS));
    }

    private void take(Context context) {
        Form form = Form.of(context);
        switch (counter.desk().takeRequest().take(new RequestAsWritten(form.values()))) {
            case Entered.Done<Job>(Job job) -> context.redirect("/jobs/" + job.number(), HttpStatus.SEE_OTHER);
            case Entered.Refused<Job> refused ->
                views.showRefused(context, LEAF, blank(form.refused(refused.objections())));
        }
    }

    private void show(Context context) {
        JobFile file = counter.job(context);
        views.show(context, LEAF, sheet(file, form(file.job())));
    }

    private static Form form(Job job) {
        return new Form(RequestAsWritten.of(job.request()).fields(), List.of());
    }

    private Sheet sheet(JobFile file, Form form) {
        Traveller traveller = Traveller.of(file, Station.Name.ASKED_FOR);
        return new Sheet(
                counter.frame("Request of job " + file.job().number(), Section.JOBS),
                Optional.of(traveller),
                traveller.address() + "/request",
                file.job().version(),
                form,
                form.elsewhere(FIELDS));
    }

    private void amend(Context context) {
        JobFile file = counter.job(context);
        Form form = Form.of(context);
        String version = form.value(VERSION);
        int basedOn = version.matches("[0-9]{1,9}") ? Integer.parseInt(version) : 0;
        Changed<Job> changed = counter.desk()
                .amendRequest()
                .amend(file.job().number(), new RequestAsWritten(form.values()), basedOn, Hand.of(context));
        switch (changed) {
            case Entered.Done<Job>(Job job) -> context.redirect("/jobs/" + job.number(), HttpStatus.SEE_OTHER);
            case Entered.Refused<Job> refused ->
                views.showRefused(context, LEAF, sheet(file, form.refused(refused.objections())));
            case Changed.Overtaken<Job>(Job now) -> views.showRefused(context, LEAF, overtaken(file, form, now));
        }
    }

    /** What was typed stays in the fields; how the book has it now is said beside each that differs. */
    private Sheet overtaken(JobFile file, Form form, Job now) {
        var theirs = new HashMap<>(RequestAsWritten.of(now.request()).fields());
        theirs.entrySet()
                .removeIf(field ->
                        field.getValue().equals(form.value(field.getKey()).strip()));
        return sheet(file, form.overtakenBy(theirs));
    }
}
