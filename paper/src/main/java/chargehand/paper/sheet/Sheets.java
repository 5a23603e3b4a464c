package chargehand.paper.sheet;

import chargehand.drawing.picture.Picture;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.method.proved.Aid;
import chargehand.method.replay.Proof;
import chargehand.paper.stage.StageDrawing;
import chargehand.part.Part;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The method sheet of a proved method, stage pictures and all. */
public final class Sheets {
    private Sheets() {}

    /**
     * The pages of a method's sheet.
     *
     * @param job what the job is called on paper; empty for none
     * @param code opens the job on a phone, if it has a page
     */
    public static List<Picture> method(Proved proved, Kit kit, String job, Optional<ScanCode> code) {
        List<Optional<Picture>> stages = new StageDrawing(proved.part(), kit)
                .all(proved.method(), proved.proof(), MethodSheet.STAGE_WIDTH - 10, MethodSheet.STAGE_HEIGHT);
        String proof = String.format(
                Locale.ROOT,
                "Replayed as written: every surface within %.3f mm of the drawing",
                proved.proof().worst().mm());
        return MethodSheet.pages(new SheetFor(job, proved.method(), proof, stages, kit, code));
    }

    /** The sheets of what a job's method wants made first, one after the other. */
    public static List<Picture> aids(List<Aid> aids, Kit kit, String job) {
        return aids.stream()
                .flatMap(aid -> aid.made().stream()
                        .map(made -> new Proved(aid.part(), made.method(), made.proof()))
                        .map(proved -> method(
                                proved,
                                kit,
                                (job.isBlank() ? "" : job + " · ") + "for set-up " + aid.setUp(),
                                Optional.empty())))
                .flatMap(List::stream)
                .toList();
    }

    /**
     * A method and what proves it.
     *
     * @param part that it makes
     * @param method as written
     * @param proof its replay
     */
    public record Proved(Part part, Method method, Proof proof) {}
}
