package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Section;
import chargehand.part.check.SizeCheck.Kind;

/** Judges the teeth of a wheel by themselves. */
final class TeethCheck {
    private static final int FEWEST = 5;
    private static final int MOST = 500;
    private static final double LEAST_ANGLE = 10;
    private static final double MOST_ANGLE = 30;

    /** How far teeth are drawn out at the most, over their module. */
    private static final double MOST_DRAWN_OUT = 1;

    private final SizeCheck sizes;
    private final Findings findings;

    TeethCheck(SizeCheck sizes, Findings findings) {
        this.sizes = sizes;
        this.findings = findings;
    }

    void judge(String path, Section.Toothed wheel) {
        if (wheel.teeth() < FEWEST || wheel.teeth() > MOST) {
            findings.fault(
                    path + ".teeth",
                    PartFault.TEETH_OUT_OF_RANGE,
                    "A wheel here has from " + FEWEST + " to " + MOST + " teeth, not " + wheel.teeth() + ".");
            return;
        }
        double angle = wheel.pressureAngle().degrees();
        if (!(angle >= LEAST_ANGLE && angle <= MOST_ANGLE)) {
            findings.fault(
                    path + ".pressure-angle",
                    PartFault.PRESSURE_ANGLE_OUT_OF_RANGE,
                    "The pressure angle of a spur wheel lies between 10° and 30°: 20° today, 14.5° on most old inch"
                            + " wheels.");
            return;
        }
        sizes.judge(path + ".outside", wheel.outside(), Kind.SHAFT);
        if (SizeCheck.isMakeable(wheel.outside().length())) {
            outside(path, wheel);
        }
    }

    private void outside(String path, Section.Toothed wheel) {
        Length outside = wheel.outside().length();
        Length most = Section.Toothed.fullOutside(wheel.teeth(), wheel.size())
                .plus(Length.mm(2 * MOST_DRAWN_OUT * wheel.size().module()));
        if (!outside.isMoreThan(wheel.pitchDiameter()) || outside.isMoreThan(most)) {
            findings.fault(
                    path + ".outside",
                    PartFault.TEETH_OUTSIDE,
                    findings.say(outside) + " over the tips is not that of " + wheel.teeth()
                            + " such teeth: full-depth ones measure "
                            + findings.say(Section.Toothed.fullOutside(wheel.teeth(), wheel.size())) + ".");
        } else if (!wheel.root().isPositive()) {
            findings.fault(
                    path + ".teeth",
                    PartFault.TEETH_OUT_OF_RANGE,
                    "So few teeth of this size leave nothing below their roots.");
        }
    }
}
