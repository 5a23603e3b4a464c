package chargehand.method.search;

import chargehand.method.task.Task;
import java.util.Optional;

/** The feature of the drawing that a task belongs to. */
final class FeatureName {
    private FeatureName() {}

    /** Its name as the part gives it, {@code end A} or {@code end B} for an end; empty for coming off the bar. */
    static Optional<String> of(Task task) {
        return switch (task) {
            case Task.FaceOf face -> Optional.of("end " + face.end());
            case Task.CentreIn centre -> Optional.of("end " + centre.end());
            case Task.Turned turned -> Optional.of(turned.section().name());
            case Task.Corner corner -> Optional.of(corner.section().name());
            case Task.Threading thread -> Optional.of(thread.section().name());
            case Task.Teeth teeth -> Optional.of(teeth.section().name());
            case Task.FaceHoles holes -> Optional.of(holes.holes().name());
            case Task.Flats flats -> Optional.of(flats.section().name());
            case Task.Inside inside -> Optional.of(inside.bore().name());
            case Task.InWall inWall -> Optional.of(inWall.inBore().name());
            case Task.Crossing crossing -> Optional.of(crossing.across().name());
            case Task.OffTheBar off -> Optional.empty();
        };
    }
}
