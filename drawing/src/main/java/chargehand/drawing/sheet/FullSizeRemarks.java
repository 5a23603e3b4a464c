package chargehand.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

/** What must be known before lengths are taken from a drawing at full size. */
final class FullSizeRemarks {
    private FullSizeRemarks() {}

    static List<String> of(Fitting fitting) {
        List<String> remarks = new ArrayList<>();
        remarks.add(
                "For paper " + fitting.sheet() + " at scale " + fitting.scale().text() + ".");
        if (!fitting.views().getFirst().scale().gaps().isEmpty()) {
            remarks.add(
                    "The main view is broken: along its axis it is shorter than the part. Take lengths from the figures.");
        }
        remarks.add("A view with a scale written at it is larger than the part.");
        return remarks;
    }
}
