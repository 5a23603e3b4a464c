package chargehand.method.task;

import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All the tasks of a turned part, each with the tasks that must be done before it by the trade's order: face before
 * drilling, a small bore before a larger one, finish size before screwing, undercut before thread, corners before flats.
 */
public final class Tasks {
    private final Shape shape;
    private final List<Task> list = new ArrayList<>();
    private final Map<Integer, Integer> numbers = new HashMap<>();
    private final List<BitSet> before = new ArrayList<>();

    private Tasks(Shape shape) {
        this.shape = shape;
    }

    /**
     * The tasks of a body.
     *
     * @param offTheBar whether the work must come off a longer bar
     */
    public static Tasks of(Body.Turned body, boolean offTheBar) {
        var tasks = new Tasks(new Shape(body));
        tasks.collect(offTheBar);
        tasks.list.forEach(task -> tasks.numbers.put(Spot.of(task), tasks.numbers.size()));
        tasks.list.forEach(task -> tasks.before.add(tasks.mustPrecede(task)));
        return tasks;
    }

    public Shape shape() {
        return shape;
    }

    /** The tasks; their places in this list are their numbers in every set of tasks. */
    public List<Task> list() {
        return List.copyOf(list);
    }

    public Task get(int number) {
        return list.get(number);
    }

    public int size() {
        return list.size();
    }

    /** The numbers of the tasks that must be done before this one, in this set-up or an earlier one. */
    public BitSet before(int number) {
        return (BitSet) before.get(number).clone();
    }

    /** Whether all that must be done before a task is among these. */
    public boolean isReady(int number, BitSet done) {
        BitSet first = before.get(number);
        for (int i = first.nextSetBit(0); i >= 0; i = first.nextSetBit(i + 1)) {
            if (!done.get(i)) {
                return false;
            }
        }
        return true;
    }

    /** The number of a task; refuses one that is not of this part. */
    public int number(Task task) {
        int number = find(task);
        if (number < 0) {
            throw new IllegalArgumentException("not a task of this part: " + task);
        }
        return number;
    }

    public boolean contains(Task task) {
        return find(task) >= 0;
    }

    /** The number of a task; below 0 for one that is not of this part. */
    private int find(Task task) {
        int number = numbers.getOrDefault(Spot.of(task), -1);
        return number >= 0 && list.get(number).equals(task) ? number : -1;
    }

    /** The numbers of the tasks the part asks for: all but the aids. */
    public BitSet required() {
        var required = new BitSet(list.size());
        for (int i = 0; i < list.size(); i++) {
            required.set(i, !(list.get(i) instanceof Task.CentreIn));
        }
        return required;
    }

    private void collect(boolean offTheBar) {
        for (End end : End.values()) {
            list.add(new Task.FaceOf(end));
            if (shape.body().inside().stream().noneMatch(bore -> Bores.opensAt(bore, end))) {
                list.add(new Task.CentreIn(end));
            }
        }
        for (int i = 0; i < shape.count(); i++) {
            collectSection(i);
        }
        List<Bore> inside = shape.body().inside();
        for (int i = 0; i < inside.size(); i++) {
            if (inside.get(i).isThere() || !Bores.isSwallowed(inside.get(i), shape.body())) {
                list.add(new Task.Inside(i, inside.get(i)));
            }
        }
        List<Across> across = shape.body().across();
        for (int i = 0; i < across.size(); i++) {
            list.add(new Task.Crossing(i, across.get(i)));
        }
        List<InBore> inBores = shape.body().inBores();
        for (int i = 0; i < inBores.size(); i++) {
            list.add(new Task.InWall(i, inBores.get(i)));
        }
        List<OnEnd> onEnds = shape.body().onEnds();
        for (int i = 0; i < onEnds.size(); i++) {
            if (onEnds.get(i) instanceof OnEnd.Drilled holes) {
                list.add(new Task.FaceHoles(i, holes));
            }
        }
        if (offTheBar) {
            list.add(new Task.OffTheBar());
        }
    }

    private void collectSection(int index) {
        Section section = shape.section(index);
        list.add(new Task.Turned(index, section));
        for (End side : End.values()) {
            if (!(shape.edge(index, side) instanceof Edge.Plain)) {
                list.add(new Task.Corner(index, section, side));
            }
        }
        switch (section) {
            case Section.Threaded threaded -> list.add(new Task.Threading(index, threaded));
            case Section.Polygon polygon -> list.add(new Task.Flats(index, polygon));
            case Section.Round round -> {}
            case Section.Cone cone -> {}
            case Section.Groove groove -> {}
            case Section.Toothed toothed -> list.add(new Task.Teeth(index, toothed));
            case Section.Knurled knurled -> {}
            case Section.Curved curved -> {}
        }
    }

    private BitSet mustPrecede(Task task) {
        var first = new BitSet(list.size());
        for (int i = 0; i < list.size(); i++) {
            if (precedes(list.get(i), task)) {
                first.set(i);
            }
        }
        return first;
    }

    private boolean precedes(Task first, Task then) {
        return switch (then) {
            case Task.FaceOf face -> false;
            case Task.CentreIn centre -> first instanceof Task.FaceOf face && face.end() == centre.end();
            case Task.Turned turned -> false;
            case Task.Corner corner -> precedesCorner(first, corner);
            case Task.Threading thread -> precedesThread(first, thread);
            case Task.Flats flats -> isTurningOf(first, flats.index()) || isHollowCorner(first, flats.index());
            case Task.Teeth teeth -> precedesTeeth(first, teeth);
            case Task.FaceHoles holes -> first instanceof Task.FaceOf || first instanceof Task.OffTheBar;
            case Task.Inside inside -> precedesInside(first, inside);
            case Task.Crossing crossing -> precedesCrossing(first, crossing);
            case Task.InWall inWall -> precedesInWall(first, inWall.inBore());
            case Task.OffTheBar off -> false;
        };
    }

    private boolean precedesCorner(Task first, Task.Corner corner) {
        int neighbour = shape.neighbour(corner.index(), corner.side());
        return isTurningOf(first, corner.index())
                || isTurningOf(first, neighbour)
                || (!shape.isSection(neighbour) && first instanceof Task.FaceOf face && face.end() == corner.side());
    }

    private boolean precedesThread(Task first, Task.Threading thread) {
        int index = thread.index();
        return isTurningOf(first, index) || isCornerOf(first, index) || isGrooveBeside(first, index);
    }

    /** Teeth come last on a wheel: its blank is to size, faced, bored through and off its bar. */
    private static boolean precedesTeeth(Task first, Task.Teeth teeth) {
        return isTurningOf(first, teeth.index())
                || isCornerOf(first, teeth.index())
                || first instanceof Task.FaceOf
                || first instanceof Task.OffTheBar
                || (first instanceof Task.Inside inside && Bores.isThrough(inside.bore()));
    }

    private boolean isGrooveBeside(Task first, int index) {
        return first instanceof Task.Turned turned
                && turned.section() instanceof Section.Groove
                && Math.abs(turned.index() - index) == 1;
    }

    private static boolean isTurningOf(Task task, int index) {
        return task instanceof Task.Turned turned && turned.index() == index;
    }

    private boolean isHollowCorner(Task task, int index) {
        return task instanceof Task.Corner corner && corner.index() == index && shape.isHollow(index, corner.side());
    }

    private static boolean isCornerOf(Task task, int index) {
        return task instanceof Task.Corner corner && corner.index() == index;
    }

    private boolean precedesInside(Task first, Task.Inside then) {
        if (first instanceof Task.FaceOf face) {
            return face.end() == then.bore().from() && then.bore().depth() instanceof Depth.Blind;
        }
        return first instanceof Task.Inside inside && inside.index() != then.index() && comesFirst(inside, then);
    }

    /** A smaller bore first where two overlap; a plain hole before the seat or cone in its mouth. */
    private static boolean comesFirst(Task.Inside first, Task.Inside then) {
        int bySize = BoreSize.of(first.bore()).compareTo(BoreSize.of(then.bore()));
        return Bores.overlap(first.bore(), then.bore())
                && (bySize < 0 || (bySize == 0 && first.index() < then.index()));
    }

    private boolean precedesCrossing(Task first, Task.Crossing crossing) {
        return switch (first) {
            case Task.Turned turned -> touches(turned.index(), crossing.across());
            case Task.FaceOf face -> true;
            case Task.Inside inside -> false;
            case Task.Corner corner -> false;
            case Task.Threading thread -> false;
            case Task.Flats flats -> false;
            case Task.Teeth teeth -> false;
            case Task.FaceHoles holes -> false;
            case Task.CentreIn centre -> false;
            case Task.Crossing other -> false;
            case Task.InWall inWall -> false;
            case Task.OffTheBar off -> true;
        };
    }

    /** The bore is to size and its end is faced; a slot along it comes after a recess in which a tool may run out. */
    private boolean precedesInWall(Task first, InBore then) {
        return switch (first) {
            case Task.Inside inside -> inside.bore().name().equals(then.bore());
            case Task.FaceOf face ->
                shape.body().inside().stream()
                        .anyMatch(bore -> bore.name().equals(then.bore()) && bore.from() == face.end());
            case Task.InWall other -> other.inBore() instanceof InBore.Recess && !(then instanceof InBore.Recess);
            case Task.Turned turned -> false;
            case Task.Corner corner -> false;
            case Task.Threading thread -> false;
            case Task.Flats flats -> false;
            case Task.CentreIn centre -> false;
            case Task.Teeth teeth -> false;
            case Task.FaceHoles holes -> false;
            case Task.Crossing crossing -> false;
            case Task.OffTheBar off -> false;
        };
    }

    private boolean touches(int index, Across across) {
        return across.begins().isLessThan(shape.end(index)) && across.ends().isMoreThan(shape.start(index));
    }
}
