package chargehand.web.job;

import chargehand.book.job.Stage;
import chargehand.book.progress.StepAt;
import chargehand.book.use.JobFile;
import java.util.Optional;

/**
 * The one key that goes on with a job.
 *
 * @param label what it does
 * @param say why this comes next
 * @param address where it leads, or where it is sent
 * @param moveTo the stage it moves the job to; empty for a key that does not move it
 * @param sends whether pressing it changes something
 */
public record NextKey(String label, String say, String address, Optional<Stage> moveTo, boolean sends) {
    /** The key for a job; empty when nothing is left to do. */
    static Optional<NextKey> of(JobFile file) {
        String job = "/jobs/" + file.job().number();
        return switch (file.next()) {
            case DRAW -> opens("Draw the part", "Nothing is drawn yet.", job + "/drawing");
            case MEND_DRAWING ->
                opens(
                        "Mend the drawing",
                        "The drawing is kept, but something in it cannot stand yet.",
                        job + "/drawing");
            case PLAN ->
                Optional.of(new NextKey("Work out a method", planSay(file), job + "/method", Optional.empty(), true));
            case UNLOCK ->
                opens("See what is in the way", "It cannot be made on this kit from this rack.", job + "/method");
            case BEGIN -> begin(file, job);
            case GO_ON -> opens("Go on at the machine", goOn(file), job + "/machine");
            case PROVE -> moves("It is made: to be proved", "Every operation is done.", job, Stage.TO_BE_PROVED);
            case PASS -> opens("Look at the readings", "Made; someone must pass it.", job + "/proving");
            case SEND_OUT -> moves("It has gone out", "Proved and passed.", job, Stage.GONE_OUT);
            case WAIT ->
                moves(
                        "It has come: go on",
                        waits(file),
                        job,
                        file.job().standing().work());
            case NOTHING -> Optional.empty();
        };
    }

    private static Optional<NextKey> opens(String label, String say, String address) {
        return Optional.of(new NextKey(label, say, address, Optional.empty(), false));
    }

    private static Optional<NextKey> moves(String label, String say, String job, Stage to) {
        return Optional.of(new NextKey(label, say, job + "/move", Optional.of(to), true));
    }

    private static String planSay(JobFile file) {
        return file.planned().isEmpty()
                ? "Drawn, all sizes given. Next: how it is held and cut, and out of what."
                : "The drawing or the count has changed since the method was worked out.";
    }

    /** A job put to ready by hand may have no method; it is then made from the request alone. */
    private static Optional<NextKey> begin(JobFile file, String job) {
        return file.progress().isPresent()
                ? opens(
                        "Go to the machine",
                        "The method is ready. Print the sheet or work from the screen.",
                        job + "/machine")
                : moves("Begin the work", "Put to ready without a method.", job, Stage.IN_HAND);
    }

    private static String goOn(JobFile file) {
        return file.progress()
                .flatMap(progress -> progress.next()
                        .map(at -> at(at, progress.operation(at).orElseThrow().say())))
                .orElse("");
    }

    private static String at(StepAt at, String say) {
        return "Set-up " + at.setUp() + ", operation " + at.operation() + ": " + say + ".";
    }

    private static String waits(JobFile file) {
        return "Stopped. Waits for " + file.job().standing().waitsFor().orElse("something") + ".";
    }
}
