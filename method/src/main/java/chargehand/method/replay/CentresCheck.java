package chargehand.method.replay;

import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.part.End;

/** Whether turned work can be carried between the centres of a lathe on its own centre holes. */
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
        faults.unless(
                !held.runOut().isLessThan(Believable.CENTRES_RUN_OUT),
                Fault.Code.NOT_TRUE,
                () -> "between centres work runs no truer than " + faults.size(Believable.CENTRES_RUN_OUT));
        fits();
    }

    /** Whether the work goes between the centres and turns over the slide. */
    void fits() {
        faults.unless(
                !work.span().length().isMoreThan(lathe.room().betweenCentres())
                        && !work.largest(work.span()).isMoreThan(lathe.room().overSlide()),
                Fault.Code.TOO_BIG,
                () -> "the work is too long or too large between the centres of the " + lathe.name());
    }
}
