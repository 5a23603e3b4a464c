package chargehand.book.progress;

import chargehand.measure.Length;
import chargehand.measure.Limits;

/** How a reading lies to its limits. */
public enum Verdict {
    IN("in"),
    UNDER("under the lower limit"),
    OVER("over the upper limit");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** How a size lies to the limits, which both belong to what is allowed. */
    public static Verdict of(Length size, Limits limits) {
        if (size.isLessThan(limits.least())) {
            return UNDER;
        }
        return size.isMoreThan(limits.most()) ? OVER : IN;
    }
}
