package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.Optional;

/**
 * Whether the outside is at its size where a depth is counted from it: a keyway or a blind hole across that is cut before
 * the outside is turned comes out too shallow.
 */
final class DepthGround {
    private final Solid wanted;
    private final TurnedWork work;
    private final FaultList faults;

    DepthGround(Solid wanted, TurnedWork work, FaultList faults) {
        this.wanted = wanted;
        this.work = work;
        this.faults = faults;
    }

    void check(Cut cut) {
        if (cut instanceof Cut.MillKeyway keyway) {
            ground(Span.between(keyway.from(), keyway.from().plus(keyway.length())));
        }
        if (cut instanceof Cut.DrillAcross hole && !hole.through()) {
            Length half = hole.diameter().half();
            ground(Span.between(hole.at().minus(half), hole.at().plus(half)));
        }
    }

    private void ground(Optional<Span> over) {
        over.filter(span -> work.span().holds(span, Deviation.ALLOWED))
                .flatMap(span -> span.common(Carving.span(wanted.outer())))
                .flatMap(span -> span.common(work.span()))
                .ifPresent(span -> faults.unless(
                        isFinished(Carving.cut(work.outer(), span), Carving.cut(wanted.outer(), span)),
                        Fault.Code.WRONG_BLANK,
                        () -> "the outside is not at its size yet, from which the depth is counted"));
    }

    private static boolean isFinished(Profile made, Profile asked) {
        return Deviation.isAllowed(made, asked);
    }
}
