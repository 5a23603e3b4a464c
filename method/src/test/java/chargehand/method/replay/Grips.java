package chargehand.method.replay;

import chargehand.method.plan.Holding;
import java.util.function.UnaryOperator;

/** Holdings with another grip, or turned end for end. */
final class Grips {
    private Grips() {}

    static boolean has(Holding holding) {
        return !changed(
                        holding,
                        grip -> new Holding.Grip(
                                grip.from(), grip.to(), grip.diameter().times(2)))
                .equals(holding);
    }

    static Holding changed(Holding holding, UnaryOperator<Holding.Grip> change) {
        return switch (holding) {
            case Holding.InChuck held -> held.with(change.apply(held.grip()));
            case Holding.InCollet held ->
                new Holding.InCollet(
                        held.collet(), change.apply(held.grip()), held.headstock(), held.support(), held.runOut());
            case Holding.InDividingHead held ->
                new Holding.InDividingHead(
                        held.head(), change.apply(held.grip()), held.headstock(), held.support(), held.runOut());
            case Holding.BetweenCentres held ->
                new Holding.BetweenCentres(held.driven(), change.apply(held.dog()), held.runOut());
            case Holding.LaidAcross held ->
                new Holding.LaidAcross(held.vice(), change.apply(held.grip()), held.around());
            case Holding.OnMandrel held -> {
                Holding.Grip seat = change.apply(new Holding.Grip(held.from(), held.to(), held.bore()));
                yield new Holding.OnMandrel(
                        held.mandrel(), seat.diameter(), seat.from(), seat.to(), held.headstock(), held.runOut());
            }
            case Holding.OnStub held -> {
                Holding.Grip seat = change.apply(new Holding.Grip(held.from(), held.to(), held.bore()));
                yield new Holding.OnStub(
                        held.mandrel(), seat.diameter(), seat.from(), seat.to(), held.headstock(), held.runOut());
            }
            case Holding.InVice held -> held;
            case Holding.OnFaceplate held -> held;
            case Holding.OnTable held -> held;
            case Holding.Clamped held -> held;
        };
    }

    static boolean isPacked(Holding holding) {
        return holding instanceof Holding.InChuck held
                && (held.bearing().equals(new Holding.Bearing.Closing(true))
                        || held.bearing().equals(new Holding.Bearing.Opening(true)));
    }

    static Holding bare(Holding holding) {
        Holding.InChuck held = (Holding.InChuck) holding;
        return held.bearing() instanceof Holding.Bearing.Opening
                ? held.with(new Holding.Bearing.Opening(false))
                : held.with(new Holding.Bearing.Closing(false));
    }

    static Holding turnedRound(Holding holding) {
        Holding.InChuck held = (Holding.InChuck) holding;
        return new Holding.InChuck(
                held.chuck(),
                held.jaws(),
                held.bearing(),
                held.grip(),
                held.headstock().other(),
                held.support(),
                held.runOut());
    }
}
