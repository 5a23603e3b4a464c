package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every dimension of a thread from its designation. */
@AutoService(Sum.class)
public final class ThreadSum implements Sum {
    private static final Field<CalledThread> THREAD = Field.required(
            "thread",
            "Thread",
            ThreadKinds.CALLED,
            "M12, M12-6g, 1/2-13 UNC, 1/2 BSW, G 3/8, R 3/8, 2 BA, Tr 30x6 LH, 1/2-10 Acme");
    private static final Field<String> FIT = Field.optional(
            "fit", "Class of fit", Kinds.TEXT, "6g/6H, 2A/2B, medium, free, A or B; left out, the usual class");

    @Override
    public String name() {
        return "thread";
    }

    @Override
    public String title() {
        return "Thread";
    }

    @Override
    public String purpose() {
        return "Gives a thread's angle, pitch, diameters, depth and limits from its designation.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THREAD, FIT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("thread", "Thread"),
                Result.always("series", "Series"),
                Result.always("form", "Form"),
                Result.always("angle", "Angle between the flanks"),
                Result.always("pitch", "Pitch").shownFine(),
                Result.always("tpi", "Threads to the inch"),
                Result.always("starts", "Starts"),
                Result.always("lead", "Lead").shownFine(),
                Result.always("leftHand", "Left hand"),
                Result.always("major", "Major diameter").shownFine(),
                Result.always("effective", "Effective diameter").shownFine(),
                Result.always("minor", "Minor diameter, outside thread").shownFine(),
                Result.always("depth", "Depth to cut, outside thread").shownFine(),
                Result.always("core", "Diameter left at that depth").shownFine(),
                Result.always("minorInternal", "Minor diameter, inside thread").shownFine(),
                Result.always("majorInternal", "Major diameter, inside thread").shownFine(),
                Result.sometimes("crestRadius", "Radius at the crest").shownFine(),
                Result.sometimes("rootRadius", "Radius at the root").shownFine(),
                Result.sometimes("crestFlat", "Flat at the crest").shownFine(),
                Result.sometimes("rootFlat", "Flat at the root").shownFine(),
                Result.always("helixAngle", "Helix angle at the effective diameter"),
                Result.sometimes("taper", "Taper on diameter, 1 in"),
                Result.sometimes("gaugeLength", "Small end to gauge plane"),
                Result.sometimes("gaugeTolerance", "Gauge plane may be off, either way"),
                Result.sometimes("usefulLength", "Useful thread, at least"),
                Result.sometimes("smallEnd", "Major diameter at the small end").shownFine(),
                Result.sometimes("fit", "Class of fit"),
                Result.sometimes("limits", "Limits").shownFine(),
                Result.sometimes("spanner", "Spanner, across flats"),
                Result.sometimes("spannerName", "Spanner is marked"),
                Result.sometimes("spannerOlder", "Spanner on earlier work, across flats"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a metric bolt", Map.of("thread", "M12")),
                new Example("a Whitworth bolt, free fit", Map.of("thread", "1/2 BSW", "fit", "free")),
                new Example("a taper pipe thread", Map.of("thread", "3/8 BSPT")),
                new Example("a two-start left-hand screw", Map.of("thread", "Tr 40x14 (P7) LH")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        CalledThread called = asked.get(THREAD);
        ScrewThread thread = called.thread();
        Optional<ThreadLimits> limits = limits(thread, asked.find(FIT).orElse(called.fit()));
        var steps = new ThreadSteps(thread, asked.unit(), working);
        steps.form();
        steps.diameters();
        limits.ifPresentOrElse(steps::limits, steps::noLimits);
        var answer = new ThreadAnswer(thread);
        limits.ifPresent(answer::limits);
        thread.gauge().ifPresent(gauge -> {
            steps.gauge(gauge);
            answer.gauge(gauge, thread);
        });
        Spanner.find(thread).ifPresent(spanner -> {
            steps.spanner(spanner);
            answer.spanner(spanner);
        });
        return answer.answer();
    }

    private static Optional<ThreadLimits> limits(ScrewThread thread, String fit) {
        try {
            return ThreadLimits.find(thread, fit);
        } catch (Unreadable noSuchClass) {
            throw Refusal.of(FIT, noSuchClass.say());
        }
    }
}
