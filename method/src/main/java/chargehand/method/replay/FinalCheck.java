package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Solid.FlatsPlace;
import chargehand.part.shape.Solid.ThreadPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/** Holds the work at the end against the part: its outside, its hollow, and every feature once. */
final class FinalCheck {
    private final Solid wanted;
    private final TurnedWork made;
    private final FaultList faults;

    FinalCheck(Solid wanted, TurnedWork made, FaultList faults) {
        this.wanted = wanted;
        this.made = made;
        this.faults = faults;
    }

    /** Compares everything. Returns the greatest distance between work and part. */
    Length check() {
        Length outside = Deviation.between(made.outer(), wanted.outer());
        Length inside = hollow();
        Length worst = Length.most(outside, inside);
        faults.unless(
                !worst.isMoreThan(Deviation.ALLOWED),
                Fault.Code.NOT_TO_SIZE,
                () -> "the work comes out different from the part by " + faults.size(worst));
        faults.unless(!made.onBar(), Fault.Code.NOT_CUT_OFF, () -> "the part is never parted from its bar");
        threads();
        flats();
        holes();
        keyways();
        centres();
        return worst;
    }

    /** The hollow must hold what is asked and not go beyond what tools may need. */
    private Length hollow() {
        if (!Carving.span(made.inner()).equals(Carving.span(wanted.inner()))) {
            return Deviation.between(made.inner(), wanted.inner());
        }
        Profile least = made.inner().larger(wanted.inner());
        Profile most = made.inner().smaller(wanted.innerAtMost());
        return Length.most(Deviation.between(made.inner(), least), Deviation.between(made.inner(), most));
    }

    private void threads() {
        List<ThreadPlace> places = made.solid().threads();
        match(
                "thread",
                places,
                wanted.threads(),
                (one, other) -> one.thread().equals(other.thread())
                        && one.inside() == other.inside()
                        && span(one).isWithin(Deviation.ALLOWED, span(other)));
    }

    private static Span span(ThreadPlace place) {
        return new Span(place.from(), place.to());
    }

    /** Flats that stick out nowhere beyond the outside are not there, in the part no more than on the work. */
    private void flats() {
        List<FlatsPlace> asked = wanted.flats().stream()
                .flatMap(place ->
                        StandingFlats.on(wanted.outer(), place.across(), new Span(place.from(), place.to())).stream()
                                .map(span -> new FlatsPlace(
                                        place.name(),
                                        place.sides(),
                                        place.across(),
                                        place.corners(),
                                        span.from(),
                                        span.to())))
                .toList();
        match(
                "set of flats",
                made.solid().flats(),
                asked,
                (one, other) -> one.sides() == other.sides()
                        && one.across().isWithin(Deviation.ALLOWED, other.across())
                        && new Span(one.from(), one.to())
                                .isWithin(Deviation.ALLOWED, new Span(other.from(), other.to())));
    }

    private void holes() {
        List<Across.CrossHole> asked = wanted.across().stream()
                .filter(Across.CrossHole.class::isInstance)
                .map(Across.CrossHole.class::cast)
                .toList();
        match(
                "hole across",
                made.features().holes(),
                asked,
                (hole, place) -> near(hole.at(), place.at().length())
                        && near(hole.diameter(), place.diameter().length())
                        && isSameAngle(hole.around().degrees(), place.around().degrees())
                        && isAsDeep(hole, place.depth()));
    }

    private static boolean isAsDeep(Cut.DrillAcross hole, Depth depth) {
        return switch (depth) {
            case Depth.Through through -> hole.through();
            case Depth.Blind(var size) -> !hole.through() && near(hole.depth(), size.length());
        };
    }

    private void keyways() {
        List<Across.Keyway> asked = wanted.across().stream()
                .filter(Across.Keyway.class::isInstance)
                .map(Across.Keyway.class::cast)
                .toList();
        match(
                "keyway",
                made.features().keyways(),
                asked,
                (cut, place) -> near(cut.from(), place.from().length())
                        && near(cut.length(), place.length().length())
                        && near(cut.width(), place.width().length())
                        && near(cut.depth(), place.depth().length())
                        && isSameAngle(cut.around().degrees(), place.around().degrees()));
    }

    private static boolean near(Length one, Length other) {
        return one.isWithin(Deviation.ALLOWED, other);
    }

    private static boolean isSameAngle(double one, double other) {
        return Math.abs(one - other) <= Believable.ANGLE_NEAR;
    }

    private <M, W> void match(String what, List<M> cut, List<W> asked, BiPredicate<M, W> same) {
        var missing = new ArrayList<>(asked);
        for (M each : cut) {
            boolean found = missing.stream()
                    .filter(place -> same.test(each, place))
                    .findFirst()
                    .map(missing::remove)
                    .orElse(false);
            faults.unless(
                    found, Fault.Code.NOT_AS_DRAWN, () -> "a " + what + " is made that the part does not have so");
        }
        faults.unless(
                missing.isEmpty(),
                Fault.Code.NOT_AS_DRAWN,
                () -> "a " + what + " of the part is not made: " + missing.size());
    }

    /** A centre hole may stay in a plain end, but not as a rim round a smaller hole. */
    private void centres() {
        for (Features.CentreHole centre : made.features().centres()) {
            Length hole = made.mouth(centre.end());
            faults.unless(
                    hole.isZero() || !centre.diameter().isMoreThan(hole),
                    Fault.Code.NOT_TO_SIZE,
                    () -> "the centre hole at end " + centre.end() + " is wider than the hole it starts");
        }
    }

    /** Centre holes that stay in the part. */
    List<Features.CentreHole> remains() {
        return made.features().centres().stream()
                .filter(centre -> made.mouth(centre.end()).isZero())
                .toList();
    }
}
