package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.shape.Profile;

/** Judges one slit along a part. */
final class SlitCheck {
    private final Body.Turned body;
    private final Profile outside;
    private final Profile bore;
    private final Findings findings;

    /**
     * A check for the slits of one part.
     *
     * @param bore its hollow as asked
     */
    SlitCheck(Body.Turned body, Profile outside, Profile bore, Findings findings) {
        this.body = body;
        this.outside = outside;
        this.bore = bore;
        this.findings = findings;
    }

    void judge(String path, Across.Slit slit) {
        if (slit.ends().isMoreThan(body.length())) {
            findings.fault(
                    path + ".length",
                    PartFault.ACROSS_OFF_PART,
                    "This slit ends " + findings.say(slit.ends().minus(body.length())) + " beyond end B.");
            return;
        }
        Length least = outside.least(slit.begins(), slit.ends()).times(2);
        boolean allAlong = !slit.begins().isPositive() && slit.ends().equals(body.length());
        if (!slit.wide().isLessThan(least)) {
            findings.fault(
                    path + ".slit",
                    PartFault.ACROSS_TOO_WIDE,
                    "This slit is as wide as the part is here, " + findings.say(least) + ".");
        } else if (slit.walls() == Across.Walls.BOTH && allAlong) {
            findings.fault(
                    path + ".walls",
                    PartFault.SLIT_PARTS,
                    "Through both walls and all along, this slit cuts the part in two.");
        } else if (slit.walls() == Across.Walls.ONE && isSolidSomewhere(slit)) {
            findings.fault(
                    path + ".walls",
                    PartFault.SLIT_WITHOUT_BORE,
                    "Through one wall a slit ends in a bore wider than itself, and there is none all along: write"
                            + " 'walls: both', or bore the part.");
        }
    }

    private boolean isSolidSomewhere(Across.Slit slit) {
        return !bore.cut(slit.begins(), slit.ends()).stations().stream()
                .allMatch(station -> station.radius().times(2).isMoreThan(slit.wide()));
    }
}
