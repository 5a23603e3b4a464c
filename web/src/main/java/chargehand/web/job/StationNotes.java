package chargehand.web.job;

import chargehand.book.job.Stage;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.progress.Progress;
import chargehand.book.use.JobFile;
import chargehand.measure.WorkTimeText;
import chargehand.method.plan.Method;
import chargehand.part.yaml.PartReading;

/** What there is at each station of a job, in a few words. */
final class StationNotes {
    private final JobFile file;

    StationNotes(JobFile file) {
        this.file = file;
    }

    String of(Station.Name name) {
        return switch (name) {
            case ASKED_FOR -> Days.say(file.job().askedOn());
            case DRAWN -> file.part().map(StationNotes::drawn).orElse("not yet");
            case METHOD -> file.planned().map(this::planned).orElse("not yet");
            case IN_HAND -> file.progress().map(StationNotes::inHand).orElse("");
            case PROVE -> file.progress().map(StationNotes::readings).orElse("");
            case PASSED -> moved(Stage.PASSED);
            case GONE_OUT -> moved(Stage.GONE_OUT);
        };
    }

    private static String drawn(DrawnPart drawn) {
        return switch (drawn.reading()) {
            case PartReading.Read read ->
                read.part().issue().isBlank()
                        ? "all sizes given"
                        : "issue " + read.part().issue() + ", all sizes given";
            case PartReading.Faulty faulty -> counted(faulty.faults().size(), "thing") + " to mend";
        };
    }

    private String planned(MethodRecord planned) {
        String again = file.isPlannedAsDrawn() ? "" : ", out of date";
        return switch (planned.finding()) {
            case Finding.Found found -> method(found.method()) + again;
            case Finding.NotHere notHere -> "not on this kit" + again;
        };
    }

    private static String method(Method method) {
        return counted(method.setUps().size(), "set-up") + ", " + WorkTimeText.of(method.time());
    }

    private static String inHand(Progress progress) {
        return progress.done() == 0
                ? counted(progress.all(), "step")
                : progress.done() + " of " + progress.all() + " done";
    }

    private static String readings(Progress progress) {
        int wanted = progress.steps()
                .mapToInt(step ->
                        progress.operation(step).orElseThrow().readings().size())
                .sum();
        int taken =
                progress.steps().mapToInt(step -> progress.taken(step).size()).sum();
        return taken == 0 ? counted(wanted, "reading") : taken + " of " + counted(wanted, "reading");
    }

    private String moved(Stage stage) {
        boolean stands = file.job().stage() == stage || file.job().stage() == Stage.GONE_OUT;
        return stands
                ? file.moves().reversed().stream()
                        .filter(move -> move.to() == stage)
                        .findFirst()
                        .map(move -> Days.say(move.by().at()))
                        .orElse("")
                : "";
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
