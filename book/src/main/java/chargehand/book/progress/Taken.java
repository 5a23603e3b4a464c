package chargehand.book.progress;

import chargehand.book.Signed;
import chargehand.book.progress.Deed.Measured;
import chargehand.method.plan.Reading;

/**
 * A reading as it was taken last.
 *
 * @param wanted what was to be measured, and the limits
 * @param measured what was read
 * @param verdict how it lies to the limits
 * @param entry the number of its entry, for one that puts it right
 * @param by who read it and when
 */
public record Taken(Reading wanted, Measured measured, Verdict verdict, int entry, Signed by) {
    static Taken of(Reading wanted, Measured measured, ProgressEntry entry) {
        Verdict verdict = Verdict.of(measured.size().length(), wanted.limits());
        return new Taken(wanted, measured, verdict, entry.number(), entry.by());
    }
}
