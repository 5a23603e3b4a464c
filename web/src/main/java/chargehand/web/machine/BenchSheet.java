package chargehand.web.machine;

import chargehand.book.progress.StepAt;
import chargehand.book.progress.Verdict;
import chargehand.measure.LengthText;
import chargehand.method.kit.Kit;
import chargehand.method.plan.SetUp;
import chargehand.method.start.BeforeStart;
import chargehand.paper.sheet.HeldIn;
import chargehand.web.method.Kits;
import chargehand.web.method.OperationFace;
import chargehand.web.method.Replays;
import chargehand.web.serving.Form;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import java.util.List;
import java.util.Optional;

/**
 * One operation as it stands at the machine.
 *
 * @param place which of the set-ups
 * @param count which of the operations and the pieces
 * @param crossReads what the cross dial counts
 * @param picture the work in its holding as an SVG element
 * @param instructions how to set up, where this is the set-up's first operation
 * @param checks what to look at before switching on, where this is the first operation on a piece
 * @param entries the readings as taken so far
 * @param doneBy who ticked it; empty while it is not done
 * @param passedBy who passed the hold point; empty while nobody has
 * @param heldAt the hold point before this one that is not passed
 */
public record BenchSheet(
        Frame frame,
        String job,
        String address,
        String place,
        String count,
        OperationFace operation,
        String crossReads,
        String picture,
        List<String> instructions,
        List<String> checks,
        List<Entry> entries,
        Optional<String> doneBy,
        Optional<String> passedBy,
        Optional<Held> heldAt,
        String before,
        String after,
        String who,
        Form form) {

    /** A hold point that bars the way, and where it is. */
    public record Held(String say, String address) {}

    /**
     * A reading to take or taken.
     *
     * @param read what was read, empty while it is not taken
     * @param in whether it lies within its limits
     */
    public record Entry(OperationFace.ReadingFace reading, String read, boolean in, String verdict, String who) {}

    static BenchSheet of(Replays replays, Bench bench, String who, Form form) {
        SetUp setUp = bench.setUp();
        OperationFace face = OperationFace.of(bench.operation());
        String number = bench.file().job().number().toString();
        Optional<Kit> kit = replays.kit(bench.planned());
        return new BenchSheet(
                replays.counter()
                        .frame("Job " + number + ", " + bench.operation().say(), Section.JOBS),
                number,
                bench.address(),
                "Set-up " + setUp.number() + " of "
                        + bench.progress().method().setUps().size() + " · " + setUp.machine() + " · "
                        + HeldIn.say(setUp.holding()),
                count(bench, setUp),
                face,
                Kits.crossReads(kit, setUp.machine()),
                replays.of(bench.planned())
                        .map(replayed -> replayed.stage(setUp))
                        .orElse(""),
                bench.at().operation() == 1 && bench.at().piece() == 1 ? setUp.instructions() : List.of(),
                bench.at().operation() == 1 ? checks(bench, kit) : List.of(),
                face.readings().stream().map(reading -> entry(bench, reading)).toList(),
                bench.progress().tick(bench.at()).map(signed -> signed.who()),
                bench.progress().holdPassed(bench.at()).map(signed -> signed.who()),
                bench.progress().heldAt(bench.at()).map(step -> held(bench, step)),
                bench.before(),
                bench.after(),
                who,
                form);
    }

    private static List<String> checks(Bench bench, Optional<Kit> kit) {
        return kit.map(found -> BeforeStart.of(bench.progress().method(), bench.setUp(), found))
                .orElse(List.of());
    }

    private static String count(Bench bench, SetUp setUp) {
        int pieces = bench.progress().method().count();
        String piece = pieces == 1 ? "" : " · piece " + bench.at().piece() + " of " + pieces;
        return "operation " + bench.at().operation() + " of "
                + setUp.operations().size() + piece;
    }

    private static Held held(Bench bench, StepAt step) {
        return new Held("The hold point at " + step + " is not passed yet.", bench.address(step));
    }

    private static Entry entry(Bench bench, OperationFace.ReadingFace reading) {
        return bench.progress()
                .taken(bench.at(), reading.number())
                .map(taken -> new Entry(
                        reading,
                        LengthText.in(
                                taken.measured().size().length(),
                                bench.operation().settings().unit()),
                        taken.verdict() == Verdict.IN,
                        taken.verdict().word(),
                        taken.by().who()))
                .orElseGet(() -> new Entry(reading, "", false, "", ""));
    }

    /** Whether the way on is free: it is done, and passed where it has to be. */
    public boolean isFree() {
        return doneBy.isPresent() && (!operation.hold() || passedBy.isPresent());
    }
}
