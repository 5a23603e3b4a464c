package chargehand.method.task;

import chargehand.part.Across;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;

/** One surface of a turned part that must be made once to its finish size. */
public sealed interface Task {
    /** The end face. */
    record FaceOf(End end) implements Task {}

    /**
     * The turned surface of an outside section, down to crests or corners.
     *
     * @param index its place in the part's list
     */
    record Turned(int index, Section section) implements Task {}

    /** The corner of an outside section on one side of it: a chamfer or a rounding, or the radius of a hollow corner. */
    record Corner(int index, Section section, End side) implements Task {}

    /** The thread of an outside section. */
    record Threading(int index, Section.Threaded section) implements Task {}

    /** The flats of an outside section. */
    record Flats(int index, Section.Polygon section) implements Task {}

    /** The teeth of a wheel. */
    record Teeth(int index, Section.Toothed section) implements Task {}

    /** Holes in a face, on a circle. */
    record FaceHoles(int index, OnEnd.Drilled holes) implements Task {}

    /** A feature of the inside. */
    record Inside(int index, Bore bore) implements Task {}

    /** A feature across the axis. */
    record Crossing(int index, Across across) implements Task {}

    /** Something cut into the wall of a bore. */
    record InWall(int index, InBore inBore) implements Task {}

    /** A centre hole that holding may need; the part does not ask for it. */
    record CentreIn(End end) implements Task {}

    /** Coming off the bar. */
    record OffTheBar() implements Task {}
}
