package chargehand.trade.thread;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.math.BigInteger;
import java.util.Optional;

/**
 * One screw thread, such as M12, 3/8 BSW or Tr 40x14 (P7) LH: which series and size it is, and from its form every basic
 * dimension. Diameters of a taper thread are those at the gauge plane.
 *
 * @param series the family it belongs to
 * @param size the nominal size as written in its designation, such as {@code 12}, {@code 1 1/4}, {@code #10}
 * @param major basic major diameter, at least twice the pitch
 * @param pitch from one groove to the next, not the lead
 * @param starts how many threads run side by side, from 1 to {@value #MOST_STARTS}
 * @param leftHand whether it screws in anticlockwise
 */
public record ScrewThread(ThreadSeries series, String size, Length major, Pitch pitch, int starts, boolean leftHand) {
    private static final int MOST_STARTS = 12;
    private static final int EIGHTHS = 8;
    private static final double MOST_PITCH_PER_DIAMETER = 0.5;

    public ScrewThread {
        if (starts < 1 || starts > MOST_STARTS) {
            throw new Unreadable("a thread has from 1 to " + MOST_STARTS + " starts, not " + starts + ".");
        }
        if (pitch.inMm() > MOST_PITCH_PER_DIAMETER * major.mm()) {
            throw new Unreadable(
                    "a pitch coarser than half the diameter leaves hardly any core: no such thread is cut.");
        }
    }

    /**
     * Reads a designation in any of the trade's notations: {@code M12}, {@code M12x1.25}, {@code 1/2-13 UNC},
     * {@code #10-32}, {@code 1/2 BSW}, {@code G 3/8}, {@code 3/8 BSPT}, {@code 2 BA}, {@code Tr 30x6 LH},
     * {@code Tr 40x14 (P7)}, {@code 1/2-10 Acme}, and the rest of {@link ThreadSeries}.
     *
     * @throws Unreadable with a sentence saying what would do
     */
    public static ScrewThread parse(String written) {
        return ThreadReader.read(written);
    }

    /** The designation in its usual form; {@link #parse} reads it back to an equal thread. */
    public String designation() {
        return Designation.of(this);
    }

    /** How far the screw moves in one turn. */
    public Pitch lead() {
        return pitch.times(starts);
    }

    public ThreadForm form() {
        return series.form();
    }

    /** The dimensions of the groove. */
    public ThreadProfile profile() {
        return form().at(pitch);
    }

    /** Basic effective diameter, also called pitch diameter: where thread and groove are equally wide. */
    public Length effective() {
        return major.minus(profile().effectiveDrop());
    }

    /**
     * Minor diameter of the external thread in basic size, as the standard lists it. For Unified this is the UNR
     * reference and for Acme it has no clearance in it: what is left after cutting to full depth is {@link #core}.
     */
    public Length minor() {
        return major.minus(profile().minorDrop());
    }

    /** The diameter left at the root of the external thread when it is cut to {@link #depth}. */
    public Length core() {
        return major.minus(depth().times(2));
    }

    /** Basic minor diameter of the internal thread: the smallest hole that the thread's form allows. */
    public Length minorInternal() {
        return major.minus(profile().minorInternalDrop());
    }

    /** Basic major diameter of the internal thread. */
    public Length majorInternal() {
        return major.plus(profile().majorInternalRise());
    }

    /** Depth of the external thread from crest to root, on radius, as a tool cuts it. */
    public Length depth() {
        return profile().depth();
    }

    /** The angle of the helix at the effective diameter. */
    public Angle helixAngle() {
        return Angle.arctan(lead().inMm() / (Math.PI * effective().mm()));
    }

    /** Whether its pitch is given as threads to the inch, wholly or in eighths, and not in millimetres. */
    public boolean isByThreadsToTheInch() {
        return pitch.tpi().multiply(EIGHTHS).getDenominator().equals(BigInteger.ONE);
    }

    public boolean isTaper() {
        return series.isTaper();
    }

    /** The gauge lengths of a pipe thread that seals on its thread; none for other threads. */
    public Optional<PipeGauge> gauge() {
        return PipeGauge.find(this);
    }

    /** The same thread of the other hand. */
    public ScrewThread withLeftHand(boolean left) {
        return new ScrewThread(series, size, major, pitch, starts, left);
    }

    /** The same thread with so many starts. */
    public ScrewThread withStarts(int count) {
        return new ScrewThread(series, size, major, pitch, count, leftHand);
    }

    @Override
    public String toString() {
        return designation();
    }
}
