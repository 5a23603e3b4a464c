package chargehand.method.task;

import chargehand.part.End;

/**
 * A number for where on the part a task is done and of what kind it is: no two tasks of one part have the same. A task is
 * looked up by it, since to compare it with every other in turn is slow.
 */
final class Spot {
    private static final int KINDS = 12;

    private Spot() {}

    static int of(Task task) {
        return switch (task) {
            case Task.FaceOf face -> at(number(face.end()), 0);
            case Task.CentreIn centre -> at(number(centre.end()), 1);
            case Task.OffTheBar off -> at(0, 2);
            case Task.Turned turned -> at(turned.index(), 3);
            case Task.Corner corner -> at(2 * corner.index() + number(corner.side()), 4);
            case Task.Threading thread -> at(thread.index(), 5);
            case Task.Flats flats -> at(flats.index(), 6);
            case Task.Inside inside -> at(inside.index(), 7);
            case Task.Crossing crossing -> at(crossing.index(), 8);
            case Task.InWall inWall -> at(inWall.index(), 9);
            case Task.Teeth teeth -> at(teeth.index(), 10);
            case Task.FaceHoles holes -> at(holes.index(), 11);
        };
    }

    private static int number(End end) {
        return switch (end) {
            case A -> 0;
            case B -> 1;
        };
    }

    private static int at(int place, int kind) {
        return place * KINDS + kind;
    }
}
