package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.Locale;

/** Whether turned work is stiff enough where it is cut: length over diameter, added up from the jaws to the cut. */
final class StiffnessCheck {
    private final TurnedWork work;
    private final Holding holding;
    private final FaultList faults;

    StiffnessCheck(TurnedWork work, Holding holding, FaultList faults) {
        this.work = work;
        this.holding = holding;
        this.faults = faults;
    }

    void check(Cut cut) {
        if (cut instanceof Cut.Deburr || cut instanceof Cut.PartOff) {
            return;
        }
        switch (holding) {
            case Holding.InChuck held -> fromJaws(cut, held.grip(), held.headstock(), held.support());
            case Holding.InCollet held -> fromJaws(cut, held.grip(), held.headstock(), held.support());
            case Holding.InDividingHead held -> fromJaws(cut, held.grip(), held.headstock(), held.support());
            case Holding.BetweenCentres held -> judge(slenderness(work.span()), new Holding.Support.Centre());
            case Holding.OnMandrel held -> {}
            case Holding.OnStub held -> {}
            case Holding.OnFaceplate held -> {}
            case Holding.LaidAcross held -> {}
            case Holding.InVice held -> {}
            case Holding.OnTable held -> {}
            case Holding.Clamped held -> {}
        }
    }

    /**
     * With a centre the whole of what stands out bends; without one, what lies between the jaws and the cut; with a fixed
     * steady, what lies before it and what lies between it and the cut, each by itself.
     */
    private void fromJaws(Cut cut, Holding.Grip grip, End headstock, Holding.Support support) {
        End free = headstock.other();
        Length front = free == End.A ? grip.from() : grip.to();
        switch (support) {
            case Holding.Support.None none -> bends(front, farthest(cut, free), free, support);
            case Holding.Support.Centre centre -> bends(front, work.face(free), free, support);
            case Holding.Support.TravellingSteady steady -> bends(front, work.face(free), free, support);
            case Holding.Support.FixedSteady steady -> {
                bends(front, steady.at(), free, support);
                bends(steady.at(), farthest(cut, free), free, new Holding.Support.None());
            }
        }
    }

    private void bends(Length from, Length to, End free, Holding.Support support) {
        Span.between(from, to)
                .filter(out -> free.distance(from, to).isPositive())
                .ifPresent(out -> judge(slenderness(out), support));
    }

    private Length farthest(Cut cut, End free) {
        return CutPlace.of(cut)
                .filter(CutPlace.Beside.class::isInstance)
                .map(CutPlace.Beside.class::cast)
                .map(beside -> nearer(beside.span().border(free), free))
                .orElse(work.face(free));
    }

    private Length nearer(Length border, End free) {
        Length face = work.face(free);
        return free.distance(border, face).isNegative() ? face : border;
    }

    private void judge(double slenderness, Holding.Support support) {
        faults.unless(
                slenderness <= Believable.mostSlender(support),
                Fault.Code.TOO_SLENDER,
                () -> String.format(
                        Locale.ROOT, "the work is too slender to be cut there: %.1f diameters stand out", slenderness));
    }

    private double slenderness(Span out) {
        return Carving.within(work.outer(), out)
                .map(StiffnessCheck::overDiameter)
                .orElse(0.0);
    }

    private static double overDiameter(Profile profile) {
        double sum = 0;
        for (int i = 1; i < profile.stations().size(); i++) {
            Station one = profile.stations().get(i - 1);
            Station other = profile.stations().get(i);
            Length both = one.radius().plus(other.radius());
            sum += both.isPositive() ? other.at().minus(one.at()).over(both) : 0;
        }
        return sum;
    }
}
