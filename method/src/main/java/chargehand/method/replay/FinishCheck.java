package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.Optional;

/** Watches that turned work never gets smaller than the finished part, nor a wall too thin to be cut. */
final class FinishCheck {
    private final Solid wanted;
    private final Span part;
    private Length leastWall;
    private final FaultList faults;
    private Length deepest = Length.ZERO;

    FinishCheck(Solid wanted, FaultList faults) {
        this.wanted = wanted;
        this.part = new Span(Length.ZERO, wanted.length());
        this.leastWall = wanted.inner()
                .thinnest(wanted.outerAtLeast(), Believable.LEAST_WALL)
                .map(thinnest -> thinnest.wall().minus(Deviation.ALLOWED))
                .orElse(Believable.LEAST_WALL);
        this.faults = faults;
    }

    /** Whether raw work holds the part. */
    boolean holdsPart(TurnedWork raw) {
        return !depth(raw).isMoreThan(Deviation.ALLOWED);
    }

    /** Looks at the work after an operation that changed it. */
    void check(TurnedWork before, TurnedWork after) {
        if (before.outer().equals(after.outer()) && before.inner().equals(after.inner())) {
            return;
        }
        Length depth = depth(after);
        Length allowed = Length.most(Deviation.ALLOWED, deepest);
        faults.unless(
                !depth.isMoreThan(allowed),
                Fault.Code.BELOW_FINISH,
                () -> "this cuts " + faults.size(depth) + " into the finished part");
        deepest = Length.most(deepest, depth);
        wall(after);
    }

    /** How far the work lies within the part, anywhere. */
    private Length depth(TurnedWork work) {
        if (!work.span().holds(part, Deviation.ALLOWED)) {
            return Length.most(work.span().from(), part.to().minus(work.span().to()));
        }
        Length outside = missing(work.outer(), wanted.outer());
        Length inside = opened(work.inner(), wanted.innerAtMost());
        return Length.most(outside, inside);
    }

    private Length missing(Profile made, Profile asked) {
        Span both = Carving.span(made).common(Carving.span(asked)).orElseThrow();
        Profile least = Carving.cut(asked, both);
        return beyond(Carving.cut(made, both).smaller(least), least);
    }

    private Length opened(Profile made, Profile asked) {
        Span both = Carving.span(made).common(Carving.span(asked)).orElseThrow();
        Profile most = Carving.cut(asked, both);
        return beyond(Carving.cut(made, both).larger(most), most);
    }

    private static Length beyond(Profile made, Profile bound) {
        return Deviation.isAllowed(made, bound) ? Length.ZERO : Deviation.between(made, bound);
    }

    /** A wall once found too thin is told again only where it gets thinner yet. */
    private void wall(TurnedWork work) {
        Optional<Length> thinnest =
                work.inner().thinnest(work.solid().outerAtLeast(), leastWall).map(Profile.Wall::wall);
        if (thinnest.isPresent()) {
            leastWall = thinnest.get();
            faults.add(Fault.Code.WALL_TOO_THIN, "a wall of " + faults.size(leastWall) + " is left");
        }
    }
}
