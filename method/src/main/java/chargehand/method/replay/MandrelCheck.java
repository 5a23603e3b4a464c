package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.kit.Tooling.MandrelKind;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import java.util.List;
import java.util.Optional;

/** Whether turned work can be carried on a mandrel in its bore: between centres, or on a stub turned in the chuck. */
final class MandrelCheck {
    /** How much of the work's length a mandrel bears on, at the least. */
    private static final double LEAST_BEARING = 0.4;

    /** The longest work on a stub, over the bore. */
    private static final double MOST_ON_STUB = 4;

    private final TurnedWork work;
    private final FaultList faults;

    MandrelCheck(TurnedWork work, FaultList faults) {
        this.work = work;
        this.faults = faults;
    }

    void on(Lathe lathe, Holding.OnMandrel held, List<Mandrel> mandrels) {
        seated(held, mandrels);
        new CentresCheck(work, lathe, faults).fits();
    }

    /** In the bore, whatever carries the mandrel. */
    void seated(Holding.OnMandrel held, List<Mandrel> mandrels) {
        Optional<Mandrel> mandrel = named(held.mandrel(), mandrels)
                .filter(each ->
                        each.kind() != MandrelKind.STUB && !work.span().length().isMoreThan(each.length()));
        seated(new Seat(held.mandrel(), held.bore(), held.from(), held.to(), held.runOut()), mandrel);
    }

    void on(Lathe lathe, Holding.OnStub held, List<Mandrel> mandrels) {
        Optional<Mandrel> mandrel = named(held.mandrel(), mandrels).filter(each -> each.kind() == MandrelKind.STUB);
        seated(new Seat(held.mandrel(), held.bore(), held.from(), held.to(), held.runOut()), mandrel);
        new CentresCheck(work, lathe, faults).fits();
        faults.unless(
                work.span().length().over(held.bore()) <= MOST_ON_STUB,
                Fault.Code.TOO_SLENDER,
                () -> "the work is too long for a stub of " + faults.size(held.bore()));
        wayIn(held);
    }

    private static Optional<Mandrel> named(String name, List<Mandrel> mandrels) {
        return mandrels.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /** Where a mandrel sits, as a holding says. */
    private record Seat(String mandrel, Length bore, Length from, Length to, Length runOut) {
        Length length() {
            return to.minus(from);
        }
    }

    private void seated(Seat seat, Optional<Mandrel> mandrel) {
        faults.unless(
                mandrel.filter(each -> each.bore().contain(seat.bore())).isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "no mandrel called " + seat.mandrel() + " holds work of this length in a bore of "
                        + faults.size(seat.bore()));
        mandrel.ifPresent(each -> faults.unless(
                !seat.runOut().isLessThan(each.runOut()),
                Fault.Code.NOT_TRUE,
                () -> "the " + each.name() + " runs out by " + faults.size(each.runOut())));
        if (faults.unless(
                bears(seat),
                Fault.Code.GRIP_ON_AIR,
                () -> "there is no bore of " + faults.size(seat.bore()) + " for the mandrel to sit in")) {
            Length bearing = mandrel.map(each -> Length.least(each.length(), seat.length()))
                    .orElse(seat.length());
            faults.unless(
                    bearing.over(work.span().length()) >= LEAST_BEARING,
                    Fault.Code.GRIP_TOO_SHORT,
                    () -> "a mandrel that bears on " + faults.size(bearing) + " does not carry this length");
        }
    }

    private boolean bears(Seat seat) {
        return Span.between(seat.from(), seat.to())
                .filter(span -> work.span().holds(span, Deviation.ALLOWED))
                .flatMap(span -> Carving.within(work.inner(), span))
                .map(hollow -> hollow.least(hollow.start(), hollow.end()).times(2))
                .filter(bore -> bore.isWithin(Deviation.ALLOWED, seat.bore()))
                .isPresent();
    }

    /** A stub comes in from the headstock's end. */
    private void wayIn(Holding.OnStub held) {
        Length near = held.headstock() == End.A ? held.from() : held.to();
        boolean open = Span.between(work.face(held.headstock()), near)
                .flatMap(way -> Carving.within(work.inner(), way))
                .map(way -> way.least(way.start(), way.end()).times(2))
                .filter(narrow -> narrow.isLessThan(held.bore().minus(Deviation.ALLOWED)))
                .isEmpty();
        faults.unless(
                open,
                Fault.Code.BLOCKED_BEHIND,
                () -> "the mandrel cannot come in to that bore from end " + held.headstock());
    }
}
