package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import java.util.Optional;

/** Whether the outer end of turned work can be held as a holding says, and whether the work fits the lathe. */
final class SupportCheck {
    private final TurnedWork work;
    private final FaultList faults;
    private final End free;

    SupportCheck(TurnedWork work, End free, FaultList faults) {
        this.work = work;
        this.free = free;
        this.faults = faults;
    }

    void onLathe(Lathe lathe, Holding.Grip grip, Holding.Support support) {
        fits(lathe, grip);
        switch (support) {
            case Holding.Support.None none -> {}
            case Holding.Support.Centre centre -> centred();
            case Holding.Support.TravellingSteady steady -> {
                centred();
                travelling(lathe.holders().travellingSteady());
            }
            case Holding.Support.FixedSteady steady -> fixed(lathe.holders().fixedSteady(), steady);
        }
    }

    private void fits(Lathe lathe, Holding.Grip grip) {
        Length front = free == End.A ? grip.from() : grip.to();
        Length overhang = free.distance(front, work.face(free));
        boolean swings = Span.between(front, work.face(free))
                .map(out -> !work.largest(out).isMoreThan(lathe.room().overSlide()))
                .orElse(true);
        faults.unless(
                swings && !overhang.isMoreThan(lathe.room().betweenCentres()),
                Fault.Code.TOO_BIG,
                () -> "the work does not swing over the slide of the " + lathe.name() + ", or is too long for it");
    }

    /** A centre at the outer end wants its hole. */
    void centred() {
        faults.unless(
                work.features().centres().stream().anyMatch(centre -> centre.end() == free),
                Fault.Code.NO_CENTRE_HOLE,
                () -> "end " + free + " has no centre hole");
    }

    private void travelling(Optional<Limits> range) {
        Length largest = work.largest(work.span());
        faults.unless(
                range.filter(each -> each.contain(largest)).isPresent(),
                Fault.Code.NO_STEADY,
                () -> "no travelling steady here takes " + faults.size(largest));
    }

    private void fixed(Optional<Limits> range, Holding.Support.FixedSteady steady) {
        var pads = new Span(
                steady.at().minus(Access.STEADY_HALF_WIDTH), steady.at().plus(Access.STEADY_HALF_WIDTH));
        boolean round = work.span().holds(pads, Length.ZERO)
                && work.largest(pads).isWithin(Believable.GRIPPED_NEAR, steady.diameter())
                && work.smallest(pads).isWithin(Believable.GRIPPED_NEAR, steady.diameter());
        faults.unless(
                round && range.filter(each -> each.contain(steady.diameter())).isPresent(),
                Fault.Code.NO_STEADY,
                () -> "no fixed steady can bear on " + faults.size(steady.diameter()) + " there");
    }
}
