package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.Volume;
import java.util.List;

/**
 * What the replay of a method found.
 *
 * @param made whether the method, as written, makes the part: no fault was found
 * @param worst the greatest distance between the work at the end and the part, anywhere
 * @param faults in the order they were found
 * @param stages the work as it went through each set-up, in order
 * @param remains centre holes left in the finished work that the part does not show
 */
public record Proof(
        boolean made, Length worst, List<Fault> faults, List<Stage> stages, List<Features.CentreHole> remains) {
    public Proof {
        faults = List.copyOf(faults);
        stages = List.copyOf(stages);
        remains = List.copyOf(remains);
    }

    /**
     * One set-up as it went.
     *
     * @param setUp its number
     * @param before the work as it was put in
     * @param steps its operations, in order
     */
    public record Stage(int setUp, Work before, List<Step> steps) {
        public Stage {
            steps = List.copyOf(steps);
        }

        /** The work as it is taken out. */
        public Work after() {
            return steps.isEmpty() ? before : steps.getLast().after();
        }
    }

    /**
     * One operation as it went.
     *
     * @param operation its number
     * @param before the work before it
     * @param after the work after it
     */
    public record Step(int operation, Work before, Work after) {
        /** What came off, as chips or as a piece parted away. */
        public Volume removed() {
            return Volume.cubicMm(before.volume().cubicMm() - after.volume().cubicMm());
        }
    }
}
