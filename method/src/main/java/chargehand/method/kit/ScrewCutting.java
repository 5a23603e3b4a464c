package chargehand.method.kit;

import chargehand.measure.Pitch;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a lathe's leadscrew can be geared to.
 *
 * @param leadscrew its pitch
 * @param wheels the teeth of every change wheel owned, in rising order; a wheel owned twice stands twice
 * @param gearbox the ratios of the quick-change gearbox, empty where there is none
 * @param quadrant what the quadrant takes
 * @param dial the chasing dial, if there is one
 * @param reverses whether the leadscrew can be made to turn the other way, for left-hand threads
 */
public record ScrewCutting(
        Pitch leadscrew,
        List<Integer> wheels,
        List<Ratio> gearbox,
        Quadrant quadrant,
        Optional<ChasingDial> dial,
        boolean reverses) {
    /** The fewest teeth a change wheel is made with. */
    public static final int FEWEST_TEETH = 12;

    /** The most teeth a change wheel is made with. */
    public static final int MOST_TEETH = 150;

    public ScrewCutting {
        wheels = wheels.stream().sorted().toList();
        gearbox = List.copyOf(gearbox);
        if (wheels.stream().anyMatch(teeth -> teeth < FEWEST_TEETH || teeth > MOST_TEETH)) {
            throw new IllegalArgumentException(
                    "a change wheel has " + FEWEST_TEETH + " to " + MOST_TEETH + " teeth: " + wheels);
        }
    }

    /**
     * One setting of the gearbox.
     *
     * @param name as the plate names it, such as "B3"
     * @param turns the leadscrew's turns for one turn of the gearbox's input, more than zero
     */
    public record Ratio(String name, BigFraction turns) {
        public Ratio {
            if (turns.signum() <= 0) {
                throw new IllegalArgumentException("a gearbox ratio is more than zero, not " + turns);
            }
        }
    }

    /**
     * What the quadrant takes. Wheels of one set share a pitch of tooth, so the centres of two wheels in mesh are told by
     * their teeth together.
     *
     * @param mostPairs the most pairs of wheels, 1 to 3
     * @param leastTogether the fewest teeth two meshing wheels may have together
     * @param mostTogether the most teeth two meshing wheels may have together
     */
    public record Quadrant(int mostPairs, int leastTogether, int mostTogether) {
        public Quadrant {
            if (mostPairs < 1 || mostPairs > 3 || leastTogether < 1 || mostTogether < leastTogether) {
                throw new IllegalArgumentException(
                        "a quadrant takes 1 to 3 pairs and at least so many teeth together as its least");
            }
        }

        /** Whether two wheels can be brought into mesh. */
        public boolean meshes(int driver, int driven) {
            int together = driver + driven;
            return together >= leastTogether && together <= mostTogether;
        }
    }

    /**
     * The chasing dial.
     *
     * @param teeth of its worm wheel
     * @param marks on its face
     */
    public record ChasingDial(int teeth, int marks) {
        public ChasingDial {
            if (teeth < 1 || marks < 1) {
                throw new IllegalArgumentException("a chasing dial has teeth and marks");
            }
        }
    }
}
