package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether what is cut in a holding comes out round and straight enough. What jaws press a wall out of round by, and what work
 * that bends from the tool comes out larger by, is each no more than half of the tolerance. Solid work is not pressed out of
 * round, so an outside counts once the work is hollow.
 */
final class Roundness {
    /** The share of a tolerance that lobes or bending may use (common practice). */
    private static final double SHARE = 0.5;

    private final Part part;

    Roundness(Part part) {
        this.part = part;
    }

    boolean holds(Standing work, Choice choice, BitSet together, int number) {
        return isStiff(work, choice, work.tasks().get(number)) && isRound(work, choice, together, number);
    }

    /** What is turned where the work bends comes out larger by twice as much, less and less towards the jaws. */
    private boolean isStiff(Standing work, Choice choice, Task task) {
        if (choice.bends().isZero() || !(task instanceof Task.Turned turned)) {
            return true;
        }
        Length larger = choice.bends().times(2 * Math.pow(howFarOut(work, choice, turned.index()), 3));
        return isWithin(task, larger);
    }

    /** How far from the jaws a section reaches, as a share of what is clear; with a centre all of it counts. */
    private static double howFarOut(Standing work, Choice choice, int section) {
        if (choice.isCentred() || choice.faces().size() != 1) {
            return 1;
        }
        End free = choice.faces().iterator().next();
        Choice.Stretch clear = choice.clear();
        Length near = free == End.A ? clear.to() : clear.from();
        Length out = free.distance(near, work.shape().border(section, free));
        return Math.clamp(out.over(clear.to().minus(clear.from())), 0, 1);
    }

    private boolean isRound(Standing work, Choice choice, BitSet together, int number) {
        Length lobed = choice.outOfRound();
        Task task = work.tasks().get(number);
        if (choice.nips() && task instanceof Task.Inside) {
            return false;
        }
        if (lobed.isZero()) {
            return true;
        }
        boolean bored = task instanceof Task.Inside || isHollow(work, together);
        return !bored
                || (isWithin(task, lobed)
                        && together.stream()
                                .allMatch(other -> isWithin(work.tasks().get(other), lobed)));
    }

    private static boolean isHollow(Standing work, BitSet together) {
        return IntStream.range(0, work.tasks().size())
                .anyMatch(number -> work.tasks().get(number) instanceof Task.Inside
                        && (work.isDone(number) || together.get(number)));
    }

    private boolean isWithin(Task task, Length lobed) {
        return size(task)
                .map(size -> size.limits(part.general()).tolerance().times(SHARE))
                .filter(lobed::isMoreThan)
                .isEmpty();
    }

    /** The size of a round surface that a task makes. */
    private static Optional<Size> size(Task task) {
        return switch (task) {
            case Task.Turned turned -> size(turned.section());
            case Task.Inside inside -> size(inside.bore());
            case Task.FaceOf face -> Optional.empty();
            case Task.CentreIn centre -> Optional.empty();
            case Task.Corner corner -> Optional.empty();
            case Task.Threading thread -> Optional.empty();
            case Task.Teeth teeth -> Optional.empty();
            case Task.FaceHoles holes -> Optional.empty();
            case Task.Flats flats -> Optional.empty();
            case Task.Crossing crossing -> Optional.empty();
            case Task.InWall inWall -> Optional.empty();
            case Task.OffTheBar off -> Optional.empty();
        };
    }

    private static Optional<Size> size(Section section) {
        return switch (section) {
            case Section.Round round -> Optional.of(round.diameter());
            case Section.Cone cone -> Optional.of(cone.towardsA());
            case Section.Groove groove -> Optional.of(groove.diameter());
            case Section.Threaded threaded -> Optional.empty();
            case Section.Polygon polygon -> Optional.empty();
            case Section.Toothed toothed -> Optional.of(toothed.outside());
            case Section.Knurled knurled -> Optional.empty();
            case Section.Curved curved -> Optional.empty();
        };
    }

    private static Optional<Size> size(Bore bore) {
        return switch (bore) {
            case Bore.Bored bored -> Optional.of(bored.diameter());
            case Bore.Reamed reamed -> Optional.of(reamed.diameter());
            case Bore.Counterbored counterbored -> Optional.of(counterbored.diameter());
            case Bore.Coned coned -> Optional.of(coned.mouth());
            case Bore.Drilled drilled -> Optional.empty();
            case Bore.Tapped tapped -> Optional.empty();
        };
    }
}
