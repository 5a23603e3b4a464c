package chargehand.method.search;

import chargehand.method.plan.Method.PassedOver;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.part.Part;
import java.util.List;

/** Reasons put into words. */
final class Reasons {
    private static final int MOST_NAMED = 3;

    private Reasons() {}

    static Reason noStock(Part part, List<PassedOver> passedOver) {
        String nearest = passedOver.stream()
                .limit(MOST_NAMED)
                .map(PassedOver::why)
                .reduce((one, other) -> one + " " + other)
                .map(list -> " " + list)
                .orElse("");
        return new Reason(
                Code.NO_STOCK,
                "Nothing on the rack will make it: " + part.material() + " of a size that holds the part is wanted."
                        + nearest,
                "Buy or find " + part.material() + " large enough, or allow another material.");
    }
}
