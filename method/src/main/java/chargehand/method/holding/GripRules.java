package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.plan.Holding;
import chargehand.trade.sum.Source;

/**
 * How much grip work needs and how far it may stand out. All are common practice: a learner is taught them as rules of
 * thumb, and they err on the safe side for the light cuts of elderly machines.
 */
final class GripRules {
    /** Every rule here is of this kind. */
    static final Source SOURCE = Source.COMMON_PRACTICE;

    /** Clear space between jaws on the stock's own surface and the nearest cut. */
    static final Length CLEARANCE = Length.mm(2);

    /** Clear space between jaws on a finished section and its shoulder. */
    static final Length CLEARANCE_FINISHED = Length.mm(1);

    /** Clear space between a step bored in soft jaws and the nearest cut. */
    static final Length CLEARANCE_IN_STEP = Length.mm(0.5);

    /** The least of a thin disc that lies in a step bored in soft jaws: a washer wants no more for a light facing cut. */
    static final Length LEAST_IN_STEP = Length.mm(1);

    /** The most that work may stand out unsupported: length over diameter, added up along it. */
    static final double MOST_UNSUPPORTED = 5;

    /** The most that may stand out unsupported at all, cut only near the jaws: beyond it work whips. */
    static final double MOST_WITHOUT_WHIP = 10;

    /** The most with a centre in the tailstock. */
    static final double MOST_CENTRED = 12;

    /** The most with a centre and a travelling steady. */
    static final double MOST_STEADIED = 24;

    /** How far work is drawn out to be faced and centred close to the jaws. */
    static final Length CLOSE_IN = Length.mm(10);

    /** What four-jaw work is dialled to, whatever the chuck. */
    static final Length DIALLED = Length.mm(0.02);

    /** What packing, of one thickness as near as may be, adds to the run-out of jaws on a scroll. */
    static final Length PACKING = Length.mm(0.02);

    /** The run-out of work in a split bush put back against the jaw it was made at. */
    static final Length SPLIT_BUSH = Length.mm(0.03);

    /** The run-out of work between true centres. */
    static final Length CENTRES = Length.mm(0.01);

    private static final Length LEAST_GRIP = Length.mm(5);
    private static final Length LEAST_SEATED = Length.mm(3);
    private static final double SEATED_OF_DIAMETER = 1.0 / 16;
    private static final double DISC = 0.4;
    private static final double THIN = 0.06;
    private static final double GRIP_OF_DIAMETER = 0.25;
    private static final double GRIP_OF_OVERHANG = 0.25;

    private GripRules() {}

    /**
     * The shortest grip.
     *
     * @param diameter gripped
     * @param overhang how far the work stands out
     * @param centred whether a centre takes the outer end, so that the jaws only drive
     */
    static Length leastGrip(Length diameter, Length overhang, boolean centred) {
        Length byDiameter = Length.most(LEAST_GRIP, diameter.times(GRIP_OF_DIAMETER));
        return centred ? byDiameter : Length.most(byDiameter, overhang.times(GRIP_OF_OVERHANG));
    }

    /** The run-out in hard jaws: as measured for the chuck, and what packing adds; what is dialled is dialled packed. */
    static Length runOut(Chuck chuck, boolean packed) {
        Length measured = packed ? chuck.runOut().plus(PACKING) : chuck.runOut();
        return chuck.isIndependent() ? DIALLED : measured;
    }

    /** The shortest grip on a disc that sits back against the steps of the jaws, so that they need not keep it square. */
    static Length leastSeated(Length diameter) {
        return Length.most(LEAST_SEATED, diameter.times(SEATED_OF_DIAMETER));
    }

    /** Whether work is so short before the jaws that seating it does for a long grip. */
    static boolean isDisc(Length diameter, Length overhang) {
        return overhang.over(diameter) <= DISC;
    }

    /** Whether a disc stands out of the step that it seats in so little that nothing tips it. */
    static boolean isThin(Length diameter, Length overhang) {
        return overhang.over(diameter) <= THIN;
    }

    /** Whether soft jaws bear on so little that it is a step that holds the work, for a light facing cut and no more. */
    static boolean isInStep(Holding.Grip grip) {
        return grip.length().isLessThan(leastSeated(grip.diameter()));
    }

    /** The slenderness allowed with this support; with a fixed steady, between the jaws and the steady. */
    static double most(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> MOST_UNSUPPORTED;
            case Holding.Support.Centre centre -> MOST_CENTRED;
            case Holding.Support.TravellingSteady steady -> MOST_STEADIED;
            case Holding.Support.FixedSteady steady -> MOST_CENTRED;
        };
    }

    /** The slenderness allowed to stand out, though not to be cut all along. */
    static double mostOut(Holding.Support support) {
        return Math.max(MOST_WITHOUT_WHIP, most(support));
    }
}
