package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Holding;

/**
 * The bounds beyond which a turner would not believe a method. They are common practice, and wider than what a good
 * method uses: the replay refuses what cannot be done, not what could be done better.
 */
final class Believable {
    /** The shortest grip on anything. */
    static final Length LEAST_GRIP = Length.mm(4);

    /** The shortest grip as a share of the diameter gripped. */
    static final double GRIP_OF_DIAMETER = 0.2;

    /** The shortest grip as a share of what stands out of the jaws unsupported. */
    static final double GRIP_OF_OVERHANG = 0.2;

    /** The longest that a disc stands out of jaws on whose steps it sits, as a share of its diameter. */
    static final double DISC = 0.5;

    /** The most that an edge takes up behind the grip of a disc that sits on the steps of the jaws. */
    static final Length MOST_BEHIND_SEAT = Length.mm(2.5);

    /** How much of a grip must be at its diameter; the rest may be a chamfer that lies under the jaws. */
    static final double LEAST_BEARING = 0.6;

    /** How far a size as written may lie off the work where it is gripped. */
    static final Length GRIPPED_NEAR = Length.mm(0.02);

    /** The thinnest wall that stands while it is cut, unless the finished part is thinner. */
    static final Length LEAST_WALL = Length.mm(1);

    /** The deepest single cut on a side with a turning tool or a boring bar. */
    static final Length DEEPEST_CUT = Length.mm(4);

    /** The deepest single cut of a milling cutter. */
    static final Length DEEPEST_MILLED = Length.mm(6);

    /** How far a thread's lead may have run out over its length. */
    static final Length MOST_LEAD_ERROR = Length.mm(0.05);

    /** How near the diameter of a named drill must be to the hole it is to make. */
    static final Length DRILL_NEAR = Length.mm(0.3);

    /** The most that is faced off an end; a longer stub is parted or sawn off. */
    static final Length MOST_FACED = Length.mm(8);

    /** The largest drill that goes in without a smaller hole before it. */
    static final Length MOST_WITHOUT_PILOT = Length.mm(20);

    /** The most that a reamer takes off the diameter. */
    static final Length MOST_REAMED = Length.mm(0.9);

    /** How far beyond a blind full thread the hole must go, in pitches: the lead of a bottoming tap. */
    static final double LEAST_TAP_ROOM = 1;

    /** How near the top slide can be set to an angle (degrees). */
    static final double ANGLE_NEAR = 0.05;

    /** The thinnest wall that hard jaws press on, as a share of the diameter they grip. */
    static final double LEAST_WALL_IN_HARD_JAWS = 1.0 / 20;

    /** The thinnest wall that soft jaws press on, since they bear nearly all round. */
    static final double LEAST_WALL_IN_SOFT_JAWS = 1.0 / 60;

    /** The thinnest wall of a split bush that is not crushed, and the thickest that jaws still close. */
    static final Length LEAST_BUSH_WALL = Length.mm(1.5);

    static final Length MOST_BUSH_WALL = Length.mm(15);

    /** The least run-out of work in a split bush put back into its jaws. */
    static final Length BUSH_RUN_OUT = Length.mm(0.02);

    /** The least run-out of work between centres on an elderly lathe. */
    static final Length CENTRES_RUN_OUT = Length.mm(0.005);

    /** What packing adds to the run-out of jaws on a scroll, at the least. */
    static final Length PACKING = Length.mm(0.01);

    /** The least of a thin disc that lies in a step bored in soft jaws. */
    static final Length LEAST_IN_STEP = Length.mm(0.8);

    /** The most that a disc stands out of such a step, as a share of its diameter. */
    static final double THIN = 1.0 / 12;

    private static final Length LEAST_SEATED = Length.mm(2.5);
    private static final double SEATED_OF_DIAMETER = 0.05;
    private static final double MOST_UNSUPPORTED = 6;
    private static final double MOST_CENTRED = 14;
    private static final double MOST_STEADIED = 28;

    private Believable() {}

    /** The shortest grip on a diameter. */
    static Length leastGrip(Length diameter, Length overhang, boolean supported) {
        Length byDiameter = Length.most(LEAST_GRIP, diameter.times(GRIP_OF_DIAMETER));
        return supported ? byDiameter : Length.most(byDiameter, overhang.times(GRIP_OF_OVERHANG));
    }

    /** The shortest grip on a disc that sits back against the steps of the jaws. */
    static Length leastSeated(Length diameter) {
        return Length.most(LEAST_SEATED, diameter.times(SEATED_OF_DIAMETER));
    }

    /** The most slender that work may be between the jaws and the cut: length over diameter, added up along it. */
    static double mostSlender(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> MOST_UNSUPPORTED;
            case Holding.Support.Centre centre -> MOST_CENTRED;
            case Holding.Support.FixedSteady steady -> MOST_CENTRED;
            case Holding.Support.TravellingSteady steady -> MOST_STEADIED;
        };
    }
}
