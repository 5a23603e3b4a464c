package chargehand.web.job;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.Stage;
import chargehand.book.part.DrawnPart;
import chargehand.book.use.JobFile;
import chargehand.web.job.Station.Name;
import chargehand.web.job.Station.State;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The card that goes with a job: what it is, and its line from request to door. Every page of the job begins with it.
 *
 * @param sub for what, for whom and by when
 * @param stopped what it waits for; empty unless it is stopped
 */
public record Traveller(JobNumber number, String title, String sub, List<Station> stations, Optional<String> stopped) {
    /** The card of a job, on the page of one of its stations. */
    public static Traveller of(JobFile file, Name here) {
        return of(file, Optional.of(here));
    }

    static Traveller of(JobFile file, Optional<Name> here) {
        Job job = file.job();
        String part = file.part()
                .map(DrawnPart::issue)
                .map(issue -> issue.face().title())
                .orElse("");
        return new Traveller(
                job.number(),
                Titles.of(job, part) + ", " + Titles.off(job),
                sub(job),
                stations(file, here),
                job.standing().waitsFor());
    }

    /** Where the job's own page is. */
    public String address() {
        return "/jobs/" + number;
    }

    private static String sub(Job job) {
        String wanted = job.request()
                .wantedBy()
                .map(day -> " · wanted by " + Days.ahead(day))
                .orElse("");
        return "for " + job.request().asset() + " · asked for by "
                + job.request().asker() + ", " + Days.say(job.askedOn()) + wanted;
    }

    private static List<Station> stations(JobFile file, Optional<Name> here) {
        Optional<Name> now = now(file);
        boolean out = file.job().stage() == Stage.GONE_OUT;
        StationNotes notes = new StationNotes(file);
        return Arrays.stream(Name.values())
                .map(name -> new Station(
                        name,
                        notes.of(name),
                        "/jobs/" + file.job().number() + "/" + name.page(),
                        out ? State.DONE : state(name, now),
                        here.filter(name::equals).isPresent()))
                .toList();
    }

    private static State state(Name name, Optional<Name> now) {
        if (now.filter(name::equals).isPresent()) {
            return State.NOW;
        }
        return now.filter(at -> name.compareTo(at) < 0).isPresent() ? State.DONE : State.AHEAD;
    }

    private static Optional<Name> now(JobFile file) {
        return switch (file.next()) {
            case DRAW, MEND_DRAWING -> Optional.of(Name.DRAWN);
            case PLAN, UNLOCK -> Optional.of(Name.METHOD);
            case BEGIN, GO_ON -> Optional.of(Name.IN_HAND);
            case PROVE, PASS -> Optional.of(Name.PROVE);
            case SEND_OUT -> Optional.of(Name.GONE_OUT);
            case WAIT -> stoppedAt(file.job().standing().work());
            case NOTHING -> Optional.empty();
        };
    }

    private static Optional<Name> stoppedAt(Stage stage) {
        return switch (stage) {
            case ASKED_FOR, BEING_DRAWN -> Optional.of(Name.DRAWN);
            case READY, IN_HAND -> Optional.of(Name.IN_HAND);
            case TO_BE_PROVED -> Optional.of(Name.PROVE);
            case PASSED -> Optional.of(Name.GONE_OUT);
            case STOPPED, GONE_OUT, NOT_WANTED -> Optional.empty();
        };
    }
}
