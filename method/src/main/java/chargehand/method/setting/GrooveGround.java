package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.BitSet;

/**
 * What a groove is cut from: how far its own stretch has been turned on the way to others, and which neighbour stands
 * beside it to touch the tool on.
 *
 * @param work before the set-up
 * @param todo the numbers of the tasks done in it
 */
public record GrooveGround(Standing work, BitSet todo) {
    /** The diameter over the groove when its tool comes to it: every cut for a section behind it went over it. */
    public Length surface(int groove, End free) {
        Shape shape = work.shape();
        Length surface = work.diameter(groove);
        Length largest = shape.diameter(groove);
        End back = free.other();
        for (int i = shape.neighbour(groove, back); shape.isSection(i) && isTurned(i); i = shape.neighbour(i, back)) {
            boolean cutOver = !(shape.section(i) instanceof Section.Groove)
                    && !shape.diameter(i).isLessThan(largest);
            surface = cutOver ? Length.least(surface, shape.diameter(i)) : surface;
            largest = Length.most(largest, shape.diameter(i));
        }
        return surface;
    }

    /** The diameter on which the tool is touched: the smaller neighbour that stands proud of the groove. */
    Length touched(int groove) {
        Shape shape = work.shape();
        Length ground = work.diameter(groove);
        for (End side : End.values()) {
            int neighbour = shape.neighbour(groove, side);
            if (shape.isSection(neighbour) && now(neighbour).isMoreThan(shape.diameter(groove))) {
                ground = Length.least(ground, now(neighbour));
            }
        }
        return ground;
    }

    /** The diameter of a section once this set-up has turned what it turns. */
    private Length now(int index) {
        return isTurned(index) ? work.shape().diameter(index) : work.diameter(index);
    }

    private boolean isTurned(int index) {
        var task = new Task.Turned(index, work.shape().section(index));
        return work.tasks().contains(task) && todo.get(work.tasks().number(task));
    }
}
