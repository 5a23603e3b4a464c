package chargehand.web.method;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;
import chargehand.book.method.Basis;
import chargehand.book.method.MethodRecord;
import chargehand.method.kit.Kit;
import chargehand.method.proved.Aid;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Kept;
import java.util.List;
import java.util.Optional;

/**
 * What pages show of a planning beyond what its record holds: the replay with its pictures, the kit it was worked out for, the
 * estimate. A planning, an issue of a drawing and an edition of the kit never change once they are in the book, so what was
 * worked out for one is kept; a new planning has a number of its own.
 */
public final class Replays {
    /** Plannings kept; the pictures of one take some hundred kilobytes. */
    private static final int MOST_PLANNINGS = 60;

    private static final int MOST_EDITIONS = 8;

    private final Counter counter;
    private final Kept<Planning, Optional<Replayed>> replayed = new Kept<>(MOST_PLANNINGS);
    private final Kept<Planning, Optional<EstimateFace>> estimates = new Kept<>(MOST_PLANNINGS);
    private final Kept<Integer, Optional<Kit>> kits = new Kept<>(MOST_EDITIONS);

    public Replays(Counter counter) {
        this.counter = counter;
    }

    /** Which planning, and what it was worked out from. */
    private record Planning(JobNumber job, int number, Basis basis, Signed by) {
        static Planning of(MethodRecord planned) {
            return new Planning(planned.job(), planned.number(), planned.basis(), planned.by());
        }
    }

    public Counter counter() {
        return counter;
    }

    /** The replay of a planning; empty where no method was found. */
    public Optional<Replayed> of(MethodRecord planned) {
        return replayed.of(
                Planning.of(planned), each -> kit(planned).flatMap(kit -> Replayed.of(counter, planned, kit)));
    }

    /** The kit a planning was worked out for, as far as it can be read. */
    public Optional<Kit> kit(MethodRecord planned) {
        return kits.of(planned.basis().edition(), edition -> Kits.of(counter, edition));
    }

    /** What a planning comes to; empty where no method was found. */
    Optional<EstimateFace> estimate(MethodRecord planned) {
        return estimates.of(
                Planning.of(planned), each -> SecondLook.at(counter, planned).map(SecondLook::estimate));
    }

    /** What a planning wants made first; none where no method was found. */
    List<Aid> aids(MethodRecord planned) {
        return SecondLook.at(counter, planned).map(SecondLook::aids).orElse(List.of());
    }
}
