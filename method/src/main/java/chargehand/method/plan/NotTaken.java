package chargehand.method.plan;

import chargehand.measure.WorkTime;
import chargehand.measure.WorkTimeText;
import java.util.Optional;

/**
 * A way of holding the work that one set-up of a method does not use, though its machine is of the same kind.
 *
 * @param setUp the number of the set-up
 * @param machine its name in the kit
 * @param holder the chuck, collets, centres, mandrel, head or vice, by its name in the kit
 * @param verdict why it is not taken
 */
public record NotTaken(int setUp, String machine, String holder, Verdict verdict) {
    /** Why something is not taken. */
    public sealed interface Verdict {
        /** It for a person, a sentence. */
        String says();
    }

    /**
     * It cannot hold the work as it stands then.
     *
     * @param rule that forbids it, a sentence
     */
    public record NotPossible(String rule) implements Verdict {
        @Override
        public String says() {
            return rule;
        }
    }

    /**
     * It holds the work as it stands then, but nothing leads on from there.
     *
     * @param why a sentence
     */
    public record LeadsNowhere(String why) implements Verdict {
        @Override
        public String says() {
            return why;
        }
    }

    /**
     * It would do.
     *
     * @param by how much longer the whole method takes with it here, the rest planned as well as may be around it
     * @param atLeast whether it may be longer still: nothing quicker was found when the search was ended
     */
    public record Longer(WorkTime by, boolean atLeast) implements Verdict {
        private static final double SAME = 1;

        @Override
        public String says() {
            if (!atLeast && by.seconds() < SAME) {
                return "It would do as well: the whole takes as long.";
            }
            return "It would do, but the whole takes " + (atLeast ? "at least " : "") + WorkTimeText.of(by)
                    + " longer.";
        }
    }

    /** The time it costs, where it would do. */
    public Optional<WorkTime> longer() {
        return verdict instanceof Longer more ? Optional.of(more.by()) : Optional.empty();
    }
}
