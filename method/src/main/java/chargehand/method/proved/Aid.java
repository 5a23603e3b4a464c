package chargehand.method.proved;

import chargehand.measure.WorkTime;
import chargehand.method.plan.Method;
import chargehand.method.replay.Proof;
import chargehand.part.Part;
import java.util.Optional;

/**
 * A part that a set-up needs made first.
 *
 * @param setUp the number of the set-up
 * @param part the bush before it is slit
 * @param made how it is made; empty where this shop cannot
 */
public record Aid(int setUp, Part part, Optional<Made> made) {
    /** How it is made, and the proof. */
    public record Made(Method method, Proof proof) {}

    /** What to tell whoever comes to the set-up. */
    String says() {
        Method method = made.orElseThrow().method();
        WorkTime time = method.time();
        return "The bush comes from " + method.stock().piece() + " ("
                + method.stock().says() + "), in "
                + method.setUps().size() + " set-ups and about " + Math.round(time.seconds() / 60) + " min, held: "
                + String.join(
                        "; then ",
                        method.setUps().stream()
                                .map(setUp -> setUp.instructions().getFirst())
                                .toList())
                + " Its own sheet is printed after this one.";
    }
}
