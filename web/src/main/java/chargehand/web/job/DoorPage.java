package chargehand.web.job;

import chargehand.book.job.Stage;
import chargehand.book.use.JobFile;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** The last two stations of a job: who passed it, and when it went out. */
public final class DoorPage implements Pages {
    private final Counter counter;
    private final Views views;

    public DoorPage(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
    }

    /**
     * The page of one of the two stations.
     *
     * @param heading what it is about
     * @param say how it stands there, a sentence
     * @param key the stage that the blue key moves the job to, if this station is next
     * @param label of that key
     */
    public record Door(
            Frame frame,
            Traveller traveller,
            String heading,
            String say,
            Optional<Stage> key,
            String label,
            List<Past> history) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/passed", context -> show(context, Station.Name.PASSED, Stage.PASSED));
        routes.get("/jobs/{job}/out", context -> show(context, Station.Name.GONE_OUT, Stage.GONE_OUT));
    }

    private void show(Context context, Station.Name station, Stage stage) {
        JobFile file = counter.job(context);
        boolean next = file.job().standing().moves().contains(stage)
                && stage.compareTo(file.job().stage()) > 0;
        views.show(
                context,
                "door",
                new Door(
                        counter.frame(station.label() + ", job " + file.job().number(), Section.JOBS),
                        Traveller.of(file, station),
                        station.label(),
                        say(file, stage),
                        next ? Optional.of(stage) : Optional.empty(),
                        stage == Stage.PASSED ? "Pass it" : "It has gone out",
                        file.moves().reversed().stream().map(Past::of).toList()));
    }

    private static String say(JobFile file, Stage stage) {
        boolean there = file.job().stage() == stage || file.job().stage() == Stage.GONE_OUT;
        return file.moves().reversed().stream()
                .filter(move -> there && move.to() == stage)
                .findFirst()
                .map(move -> "Job " + file.job().number() + " was entered as " + stage.word() + " by "
                        + move.by().who() + ", " + Days.say(move.by().at()) + ".")
                .orElse("Job " + file.job().number() + " is "
                        + file.job().stage().word() + ".");
    }
}
