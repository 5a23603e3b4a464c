package chargehand.paper.sheet;

import chargehand.drawing.picture.Picture;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import java.util.List;
import java.util.Optional;

/**
 * What a method sheet is made from.
 *
 * @param job what the job is called on paper, such as "Job 214"; empty for a method of no job
 * @param method to print
 * @param proof what the replay found, one line for the foot of each page
 * @param stages a stage picture for each set-up, in their order; fewer where there is none
 * @param kit the machines, for what their dials read
 * @param code the code that opens the job on a phone
 */
public record SheetFor(
        String job, Method method, String proof, List<Optional<Picture>> stages, Kit kit, Optional<ScanCode> code) {
    public SheetFor {
        stages = List.copyOf(stages);
    }

    Optional<Picture> stage(int setUp) {
        return setUp < stages.size() ? stages.get(setUp) : Optional.empty();
    }
}
