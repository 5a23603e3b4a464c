package chargehand.book.method;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;
import chargehand.method.plan.Method;
import java.util.Optional;

/**
 * One planning of a job and what it found. Every planning is kept, the latest one counts.
 *
 * @param job planned for
 * @param number counts the job's plannings, from 1
 * @param basis what it was worked out from
 * @param finding a method with its proof, or why there is none
 * @param by who asked for it and when
 */
public record MethodRecord(JobNumber job, int number, Basis basis, Finding finding, Signed by) {
    /** The method, where one was found. */
    public Optional<Method> method() {
        return switch (finding) {
            case Finding.Found found -> Optional.of(found.method());
            case Finding.NotHere notHere -> Optional.empty();
        };
    }

    public boolean isFound() {
        return method().isPresent();
    }
}
