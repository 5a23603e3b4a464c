package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.part.Section;

/** Limits of lengths that a turner reads. */
final class LengthLimits {
    private LengthLimits() {}

    /** The length over all: its own general tolerance, which the sections' lengths are held within. */
    static Limits overall(Making making) {
        Length length = making.body().length();
        Length own = making.part().general().deviation(length);
        Length finest = making.body().outside().stream()
                .map(Section::stretch)
                .filter(stretch -> stretch.length().isToleranced())
                .map(stretch -> making.limits(stretch.length()).tolerance().half())
                .reduce(own, Length::least);
        return Limits.plusMinus(length, Length.least(own, finest));
    }
}
