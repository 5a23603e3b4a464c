package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;

/** What must be there before teeth are cut or holes drilled in a face, and how the work must be held. */
final class MilledCheck {
    private final TurnedWork work;
    private final Holding holding;
    private final FaultList faults;

    MilledCheck(TurnedWork work, Holding holding, FaultList faults) {
        this.work = work;
        this.holding = holding;
        this.faults = faults;
    }

    void teeth(Cut.CutTeeth cut) {
        boolean metal = Span.between(cut.from(), cut.to())
                .filter(span -> work.span().holds(span, Deviation.ALLOWED))
                .filter(span -> work.largest(span).isMoreThan(cut.root()))
                .isPresent();
        faults.unless(metal, Fault.Code.NOTHING_TO_CUT, () -> "there is no metal for the teeth to be cut in");
        faults.unless(
                work.features().teeth().isEmpty(), Fault.Code.MADE_TWICE, () -> "there are teeth on the work already");
        faults.unless(
                !work.onBar(), Fault.Code.OUT_OF_ORDER, () -> "a wheel comes off its bar before its teeth are cut");
        boolean bored =
                work.inner().least(work.inner().start(), work.inner().end()).isPositive();
        boolean held = bored ? holding instanceof Holding.OnMandrel : holding instanceof Holding.InDividingHead;
        faults.unless(
                held,
                Fault.Code.WRONG_SIDE,
                () -> "teeth are cut on a mandrel through the bore, or in the dividing head where there is none");
    }

    void circle(Cut.DrillCircle cut) {
        faults.unless(
                holding instanceof Holding.OnTable,
                Fault.Code.WRONG_SIDE,
                () -> "the work does not stand upright for it");
        faults.unless(
                work.features().circles().stream()
                        .noneMatch(other -> other.end() == cut.end()
                                && other.circle().isWithin(Deviation.ALLOWED, cut.circle())
                                && other.around().equals(cut.around())),
                Fault.Code.MADE_TWICE,
                () -> "those holes are there already");
        Length face = work.face(cut.end());
        Length outside = cut.circle().plus(cut.diameter());
        boolean metal = !outside.isMoreThan(work.largest(work.span()))
                && cut.circle().minus(cut.diameter()).isMoreThan(work.mouth(cut.end()));
        faults.unless(
                metal,
                Fault.Code.NOTHING_TO_CUT,
                () -> "holes on " + faults.size(cut.circle()) + " break out of the work at " + faults.size(face));
    }
}
