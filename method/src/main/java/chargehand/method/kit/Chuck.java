package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import java.util.Optional;

/**
 * A chuck with its jaws.
 *
 * @param name what the shop calls it
 * @param jaws how many: 3, 4 or 6
 * @param closing whether the jaws close together or each by itself
 * @param outside the diameters it grips from outside
 * @param inside the bores it grips from inside; empty where its jaws do not
 * @param jawLength how far the jaws bear along the work
 * @param runOut the total indicator reading as measured on a true bar; for independent jaws, what is left after dialling
 * @param soft its soft jaws, if it has any
 */
public record Chuck(
        String name,
        int jaws,
        Closing closing,
        Limits outside,
        Optional<Limits> inside,
        Length jawLength,
        Length runOut,
        Optional<SoftJaws> soft) {
    public Chuck {
        if (jaws != 3 && jaws != 4 && jaws != 6) {
            throw new IllegalArgumentException("a chuck has 3, 4 or 6 jaws, not " + jaws);
        }
        if (!jawLength.isPositive() || runOut.isNegative()) {
            throw new IllegalArgumentException("jaws have a length and run-out is not below zero");
        }
    }

    /**
     * Soft jaws, bored where they are to the size of the work.
     *
     * @param outside the diameters they can be bored to
     * @param jawLength how far they bear along the work
     * @param runOut the total indicator reading as measured on work in jaws just bored
     */
    public record SoftJaws(Limits outside, Length jawLength, Length runOut) {
        public SoftJaws {
            if (!jawLength.isPositive() || runOut.isNegative()) {
                throw new IllegalArgumentException("jaws have a length and run-out is not below zero");
            }
        }
    }

    /** How the jaws move. */
    public enum Closing {
        /** All together on a scroll. */
        SELF_CENTRING,
        /** Each by its own screw, the work dialled true. */
        INDEPENDENT
    }

    public boolean isIndependent() {
        return closing == Closing.INDEPENDENT;
    }

    /** Whether it grips this diameter (or these flats) from outside. */
    public boolean grips(Length diameter) {
        return outside.contain(diameter);
    }

    /** Whether its jaws, opening, grip in this bore. */
    public boolean gripsInside(Length bore) {
        return inside.filter(range -> range.contain(bore)).isPresent();
    }

    /**
     * Whether the jaws can sit evenly on a regular bar of so many sides: jaws on a scroll where their number goes into that
     * of the sides, independent jaws on any even number.
     */
    public boolean sitsEvenlyOn(int sides) {
        return switch (closing) {
            case SELF_CENTRING -> sides % jaws == 0;
            case INDEPENDENT -> sides % 2 == 0;
        };
    }
}
