package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Edge;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.CurvedFlank;

/** Judges one curved section by itself. */
final class CurveCheck {
    private final SizeCheck sizes;
    private final Findings findings;

    CurveCheck(SizeCheck sizes, Findings findings) {
        this.sizes = sizes;
        this.findings = findings;
    }

    void judge(String path, Section.Curved curved) {
        end(path + ".from", curved.towardsA());
        end(path + ".to", curved.towardsB());
        sizes.judge(path + ".curve", curved.radius().length());
        boolean worked = !(curved.stretch().atA() instanceof Edge.Plain
                && curved.stretch().atB() instanceof Edge.Plain);
        if (worked) {
            findings.fault(
                    path,
                    PartFault.EDGE_ON_CURVE,
                    "A curved section has no edges of its own: put them on its neighbours.");
        } else if (isMakeable(curved) && !CurvedFlank.of(curved).isPossible()) {
            findings.fault(
                    path + ".curve",
                    PartFault.CURVE_RADIUS,
                    "No such arc joins " + findings.say(curved.towardsA().length()) + " and "
                            + findings.say(curved.towardsB().length()) + " over "
                            + findings.say(curved.length()) + " without going back along the axis: a radius of "
                            + findings.say(CurvedFlank.of(curved).least())
                            + " or more reaches both, and a larger one stands less steep.");
        }
    }

    /** A point is possible at the end of a part. */
    private void end(String path, Size diameter) {
        if (!diameter.length().isZero()) {
            sizes.judge(path, diameter, Kind.SHAFT);
        }
    }

    private static boolean isMakeable(Section.Curved curved) {
        return SizeCheck.isMakeable(curved.length())
                && SizeCheck.isMakeable(curved.radius().length())
                && isEnd(curved.towardsA().length())
                && isEnd(curved.towardsB().length());
    }

    private static boolean isEnd(Length diameter) {
        return diameter.isZero() || SizeCheck.isMakeable(diameter);
    }
}
