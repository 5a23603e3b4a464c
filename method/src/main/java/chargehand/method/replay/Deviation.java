package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;

/** How far two profiles stray from each other: the greatest distance from any point of either to the other. */
final class Deviation {
    /** How near the work must come to the part, everywhere. */
    static final Length ALLOWED = Length.mm(0.001);

    private static final long MOST_NM = Length.mm(10_000).nanometres();

    private Deviation() {}

    static boolean isAllowed(Profile made, Profile wanted) {
        return made.isWithin(ALLOWED, wanted);
    }

    /** The distance, to the nanometre above. */
    static Length between(Profile made, Profile wanted) {
        if (made.equals(wanted)) {
            return Length.ZERO;
        }
        long enough = ALLOWED.nanometres();
        while (enough < MOST_NM && !made.isWithin(new Length(enough), wanted)) {
            enough *= 2;
        }
        return leastUpTo(enough, made, wanted);
    }

    private static Length leastUpTo(long enough, Profile made, Profile wanted) {
        long tooLittle = -1;
        long most = enough;
        while (most - tooLittle > 1) {
            long middle = (most + tooLittle) / 2;
            if (made.isWithin(new Length(middle), wanted)) {
                most = middle;
            } else {
                tooLittle = middle;
            }
        }
        return new Length(most);
    }
}
