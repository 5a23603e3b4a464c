package chargehand.method.replay;

import chargehand.method.kit.Lathe;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import java.util.List;
import java.util.Optional;

/** Whether turned work can be carried between the centres of a lathe: on its own centre holes, or on a mandrel. */
final class CentresCheck {
    private final TurnedWork work;
    private final Lathe lathe;
    private final FaultList faults;

    CentresCheck(TurnedWork work, Lathe lathe, FaultList faults) {
        this.work = work;
        this.lathe = lathe;
        this.faults = faults;
    }

    void between(Holding.BetweenCentres held) {
        for (End end : End.values()) {
            new SupportCheck(work, end, faults).centred();
        }
        new GripCheck(work, held.dog(), held.driven(), faults)
                .dog(lathe.holders().largestDog());
        fits();
    }

    private void fits() {
        faults.unless(
                !work.span().length().isMoreThan(lathe.room().betweenCentres())
                        && !work.largest(work.span()).isMoreThan(lathe.room().overSlide()),
                Fault.Code.TOO_BIG,
                () -> "the work is too long or too large between the centres of the " + lathe.name());
    }

    void on(Holding.OnMandrel held, List<Mandrel> mandrels) {
        Optional<Mandrel> mandrel = mandrels.stream()
                .filter(each -> each.name().equals(held.mandrel()))
                .findFirst();
        boolean fitsMandrel = mandrel.filter(each -> each.bore().contain(held.bore())
                        && !work.span().length().isMoreThan(each.length()))
                .isPresent();
        faults.unless(
                fitsMandrel,
                Fault.Code.NO_HOLDER,
                () -> "no mandrel called " + held.mandrel() + " holds in a bore of " + faults.size(held.bore())
                        + " over the length of the work");
        mandrel.ifPresent(each -> faults.unless(
                !held.runOut().isLessThan(each.runOut()),
                Fault.Code.NOT_TRUE,
                () -> "the " + each.name() + " runs out by " + faults.size(each.runOut())));
        faults.unless(
                bears(held),
                Fault.Code.GRIP_ON_AIR,
                () -> "there is no bore of " + faults.size(held.bore()) + " for the mandrel to sit in");
        fits();
    }

    private boolean bears(Holding.OnMandrel held) {
        return Span.between(held.from(), held.to())
                .flatMap(span -> Carving.within(work.inner(), span))
                .map(hollow -> hollow.least(hollow.start(), hollow.end()).times(2))
                .filter(bore -> bore.isWithin(Deviation.ALLOWED, held.bore()))
                .isPresent();
    }
}
