package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Part;
import chargehand.part.Tie;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * What a holding must be true enough for: surfaces that are round within their limits though a thin wall is pressed, and the
 * run-out budget: surfaces tied to each other are finished in one set-up, or the later one is held true enough to the
 * earlier.
 */
final class Trueness {
    private final List<Tie> ties;
    private final Roundness roundness;

    Trueness(Part part) {
        this.ties = part.ties();
        this.roundness = new Roundness(part);
    }

    /** Whether a task may be done in this holding, given what is already done and what will be done in the same one. */
    boolean holds(Standing work, Choice choice, BitSet together, int number) {
        if (!roundness.holds(work, choice, together, number)) {
            return false;
        }
        Optional<String> name = name(work.tasks().get(number));
        return name.isEmpty()
                || ties.stream()
                        .allMatch(tie -> partner(tie, name.get())
                                .filter(other -> isDoneEarlier(work, other, together))
                                .map(other -> isTrueTo(
                                        work, choice, other, tie.runOut().length()))
                                .orElse(true));
    }

    /** Whether a task makes a surface that is tied to another. */
    boolean isTied(Task task) {
        return name(task)
                .filter(name -> ties.stream().anyMatch(tie -> partner(tie, name).isPresent()))
                .isPresent();
    }

    private static Optional<String> partner(Tie tie, String name) {
        if (tie.of().equals(name)) {
            return Optional.of(tie.to());
        }
        return tie.to().equals(name) ? Optional.of(tie.of()) : Optional.empty();
    }

    private static Optional<String> name(Task task) {
        return switch (task) {
            case Task.Turned turned -> Optional.of(turned.section().name());
            case Task.Inside inside -> Optional.of(inside.bore().name());
            case Task.FaceOf face -> Optional.empty();
            case Task.CentreIn centre -> Optional.empty();
            case Task.Corner corner -> Optional.empty();
            case Task.Threading thread -> Optional.of(thread.section().name());
            case Task.Teeth teeth -> Optional.of(teeth.section().name());
            case Task.FaceHoles holes -> Optional.empty();
            case Task.Flats flats -> Optional.empty();
            case Task.Crossing crossing -> Optional.empty();
            case Task.InWall inWall -> Optional.empty();
            case Task.OffTheBar off -> Optional.empty();
        };
    }

    private static boolean isDoneEarlier(Standing work, String name, BitSet together) {
        int number = number(work, name);
        return number >= 0 && work.isDone(number) && !together.get(number);
    }

    private static int number(Standing work, String name) {
        for (int i = 0; i < work.tasks().size(); i++) {
            Task task = work.tasks().get(i);
            if (!(task instanceof Task.Threading)
                    && !(task instanceof Task.Teeth)
                    && name(task).filter(name::equals).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isTrueTo(Standing work, Choice choice, String partner, Length allowed) {
        int number = number(work, partner);
        return !choice.runOut().isMoreThan(allowed) && (isHeldBy(work, choice, number) || isDialled(choice));
    }

    /** Held by the partner itself, or by a surface made in the same set-up as the partner. */
    private static boolean isHeldBy(Standing work, Choice choice, int partner) {
        int gripped = switch (choice.gripped()) {
            case Choice.Gripped.OnSection section ->
                work.tasks()
                        .number(new Task.Turned(section.index(), work.shape().section(section.index())));
            case Choice.Gripped.OnBore bore ->
                work.tasks()
                        .number(new Task.Inside(
                                bore.index(), work.shape().body().inside().get(bore.index())));
            case Choice.Gripped.Raw raw -> -1;
            case Choice.Gripped.OnCentres centres -> -1;
            case Choice.Gripped.OnFace face -> -1;
        };
        boolean sameSetUp = gripped >= 0 && work.setUpOf(gripped) > 0 && work.setUpOf(gripped) == work.setUpOf(partner);
        boolean bothOnCentres = choice.gripped() instanceof Choice.Gripped.OnCentres && work.isMadeOnCentres(partner);
        return gripped == partner || sameSetUp || bothOnCentres;
    }

    /** Independent jaws are dialled to whatever surface is asked for. */
    private static boolean isDialled(Choice choice) {
        return choice.holding() instanceof Holding.OnFaceplate
                || (choice.holding() instanceof Holding.InChuck chuck && chuck.jaws() == 4);
    }
}
