package chargehand.method.stock;

import chargehand.method.plan.Method.PassedOver;
import java.util.List;

/**
 * What the rack offers for a part.
 *
 * @param fit the pieces it will come out of, best first: the same material before an equivalent, then least metal used up
 *     and least turned away
 * @param passedOver the rest, each with the reason: what is of a material that would do before what is not, in the order of the
 *     rack
 */
public record Candidates(List<Candidate> fit, List<PassedOver> passedOver) {
    public Candidates {
        fit = List.copyOf(fit);
        passedOver = List.copyOf(passedOver);
    }
}
