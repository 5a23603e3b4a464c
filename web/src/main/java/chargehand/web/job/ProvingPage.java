package chargehand.web.job;

import chargehand.book.job.Stage;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.progress.Taken;
import chargehand.book.progress.Verdict;
import chargehand.book.use.JobFile;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every reading of a job beside its limits, for the one who passes it. */
public final class ProvingPage implements Pages {
    private final Counter counter;
    private final Views views;

    public ProvingPage(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
    }

    /**
     * A reading and its limits.
     *
     * @param place where it was to be taken
     * @param read what was read, empty where it was not taken
     * @param verdict "in", or how it lies outside
     */
    public record Line(
            String place,
            String address,
            String what,
            String limits,
            String gauge,
            String read,
            String verdict,
            String who) {
        public boolean isOut() {
            return !verdict.isEmpty() && !verdict.equals(Verdict.IN.word());
        }
    }

    /**
     * The page.
     *
     * @param missing how many readings are not taken
     * @param out how many lie outside their limits
     * @param passable whether the job stands where it can be passed
     */
    public record Sheet(Frame frame, Traveller traveller, List<Line> lines, int missing, int out, boolean passable) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/proving", this::show);
    }

    private void show(Context context) {
        JobFile file = counter.job(context);
        List<Line> lines = file.progress()
                .map(progress -> lines("/jobs/" + file.job().number(), progress))
                .orElse(List.of());
        views.show(
                context,
                "proving",
                new Sheet(
                        counter.frame("Readings of job " + file.job().number(), Section.JOBS),
                        Traveller.of(file, Station.Name.PROVE),
                        lines,
                        count(lines.stream().filter(line -> line.read().isEmpty())),
                        count(lines.stream().filter(Line::isOut)),
                        file.job().standing().moves().contains(Stage.PASSED)));
    }

    private static int count(Stream<Line> lines) {
        return Math.toIntExact(lines.count());
    }

    private static List<Line> lines(String job, Progress progress) {
        return progress.steps().flatMap(at -> lines(job, progress, at)).toList();
    }

    private static Stream<Line> lines(String job, Progress progress, StepAt at) {
        Operation operation = progress.operation(at).orElseThrow();
        LengthUnit unit = operation.settings().unit();
        return IntStream.rangeClosed(1, operation.readings().size())
                .mapToObj(number -> line(
                        new Place(job, at, unit), operation.readings().get(number - 1), progress.taken(at, number)));
    }

    private record Place(String job, StepAt at, LengthUnit unit) {
        String say() {
            return at.setUp() + "." + at.operation() + (at.piece() > 1 ? ", piece " + at.piece() : "");
        }

        String address() {
            return job + "/machine/" + at.setUp() + "/" + at.operation() + "/" + at.piece();
        }
    }

    private static Line line(Place place, Reading wanted, Optional<Taken> taken) {
        LengthUnit unit = place.unit();
        return new Line(
                place.say(),
                place.address(),
                wanted.what(),
                LengthText.figures(wanted.limits().least(), unit) + " to "
                        + LengthText.in(wanted.limits().most(), unit),
                wanted.gauge(),
                taken.map(reading -> LengthText.in(reading.measured().size().length(), unit))
                        .orElse(""),
                taken.map(reading -> reading.verdict().word()).orElse(""),
                taken.map(reading -> reading.by().who()).orElse(""));
    }
}
