package chargehand.trade.taper;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/**
 * How steep a cone is: the change of diameter for each unit of length along its axis. One in twenty, 0.6 inches to the
 * foot and an included angle of 2° 51′ 51″ are the same taper. The included angle is the one between opposite sides; a
 * compound slide is set over by half of it.
 *
 * @param rate change of diameter over length, more than zero, at most {@value #STEEPEST}
 */
public record Taper(double rate) {
    private static final double STEEPEST = 2000;
    private static final double FLATTEST = 1e-6;
    private static final Length FOOT = Length.in(12);
    private static final double STRAIGHT_ANGLE = 180;

    public Taper {
        if (!isPossible(rate)) {
            throw new IllegalArgumentException("a taper must lie between 1 in 1000000 and a flat face, not " + rate);
        }
    }

    /** Whether a change of diameter over length is that of a taper, neither parallel nor a flat face. */
    public static boolean isPossible(double rate) {
        return rate >= FLATTEST && rate <= STEEPEST;
    }

    /** The taper of one in so much, more than zero. */
    public static Taper oneIn(double length) {
        return new Taper(1 / length);
    }

    /** The taper that changes the diameter by so much in a foot. */
    public static Taper perFoot(Length change) {
        return new Taper(change.over(FOOT));
    }

    /** The taper between two diameters so far apart along the axis. */
    public static Taper between(Length large, Length small, Length length) {
        return new Taper(large.minus(small).over(length));
    }

    /** The taper of an included angle, more than zero and less than 180°. */
    public static Taper included(Angle angle) {
        if (!(angle.degrees() > 0 && angle.degrees() < STRAIGHT_ANGLE)) {
            throw new IllegalArgumentException("an included angle lies between 0 and 180°, not " + angle.degrees());
        }
        return new Taper(2 * angle.half().tan());
    }

    /** The length in which the diameter changes by one. */
    public double oneIn() {
        return 1 / rate;
    }

    /** The change of diameter in a foot of length. */
    public Length perFoot() {
        return FOOT.times(rate);
    }

    /** The angle between opposite sides. */
    public Angle included() {
        return halfAngle().times(2);
    }

    /** The angle between side and axis: what the compound slide is swung by. */
    public Angle halfAngle() {
        return Angle.arctan(rate / 2);
    }

    /** The change of diameter over a length. */
    public Length changeOver(Length length) {
        return length.times(rate);
    }

    /**
     * How far the tailstock is set over for work of this whole length between centres, by the shop's rule: half the
     * change of diameter over the <em>whole</em> length, however short the tapered part is.
     */
    public Length setOver(Length wholeLength) {
        return wholeLength.times(rate / 2);
    }

    /** The set-over reckoned along the work as it lies askew, which the rule overstates a little on steep tapers. */
    public Length setOverAlongWork(Length wholeLength) {
        return wholeLength.times(halfAngle().sin());
    }

    /** The gauge stack under one roller of a sine bar that carries the taper on its side: it takes the included angle. */
    public Length sineBarStack(Length bar) {
        return bar.times(included().sin());
    }
}
