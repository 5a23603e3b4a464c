package chargehand.trade.spring;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Pressure;
import chargehand.measure.SpringRate;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Optional;

/** Writes down how a spring is reckoned. */
final class SpringSteps {
    private static final Source SPRINGS = Source.published("machine design: helical springs, Wahl's factor");
    private static final double LEAST_NEWTONS = 1e-6;
    private static final double MOST_NEWTONS = 1e9;

    private final Spring spring;
    private final Asked asked;
    private final Working working;

    SpringSteps(Spring spring, Asked asked, Working working) {
        this.spring = spring;
        this.asked = asked;
        this.working = working;
    }

    SpringRate rate(SpringWire wire, Source modulusFrom) {
        working.fact(
                "Torsional modulus of " + wire.name(),
                Figures.four(wire.shearModulus().megapascals()) + " MPa",
                modulusFrom);
        working.step(
                "Index",
                "C = D / d",
                mm(spring.mean()) + " / " + mm(spring.wire()),
                Figures.four(spring.index()),
                Source.GEOMETRY);
        SpringRate rate = spring.rate(wire.shearModulus());
        working.step(
                "Rate",
                "k = G d⁴ / (8 D³ n)",
                Figures.four(wire.shearModulus().megapascals()) + " × " + mm(spring.wire()) + "⁴ / (8 × "
                        + mm(spring.mean()) + "³ × " + Figures.four(spring.active()) + ")",
                Figures.four(rate.newtonsPerMm()) + " N/mm",
                SPRINGS);
        return rate;
    }

    void solid(Length solid) {
        SpringEnds ends = asked.get(SpringSum.ENDS);
        working.step(
                "Solid length, ends " + ends.word() + ", " + Figures.four(ends.total(spring.active()))
                        + " coils in all",
                "coils and ends × wire",
                Figures.four(solid.over(spring.wire())) + " × " + mm(spring.wire()),
                LengthText.both(solid, asked.unit()),
                SpringWire.source());
    }

    Optional<Force> load(SpringRate rate) {
        Optional<Force> load = asked.find(SpringSum.LOAD);
        Optional<Length> travel = asked.find(SpringSum.DEFLECTION);
        if (load.isPresent() && travel.isPresent()) {
            throw Refusal.of(SpringSum.LOAD, "give the load or the deflection, one of the two.");
        }
        load.ifPresent(force -> refuseFar(force.newtons() / rate.newtonsPerMm()));
        Optional<Force> found = load.or(() -> travel.map(down -> Force.newtons(rate.newtonsPerMm() * down.mm())));
        found.ifPresent(force -> {
            refuseOutOfProportion(force);
            travel(force, rate);
        });
        return found;
    }

    private void refuseFar(double travelMm) {
        if (travelMm > 100_000) {
            throw Refusal.of(
                    SpringSum.LOAD, "this would pull the spring out by more than 100 m: check the load and the wire.");
        }
    }

    private void refuseOutOfProportion(Force force) {
        if (force.newtons() < LEAST_NEWTONS || spring.stress(force).megapascals() > MOST_NEWTONS) {
            throw Refusal.of(
                    asked.has(SpringSum.LOAD) ? SpringSum.LOAD : SpringSum.DEFLECTION,
                    "this is out of all proportion to the spring: check both.");
        }
    }

    private void travel(Force force, SpringRate rate) {
        Length down = Length.mm(force.newtons() / rate.newtonsPerMm());
        working.step(
                asked.has(SpringSum.LOAD) ? "Deflection under the load" : "Load at the deflection",
                asked.has(SpringSum.LOAD) ? "δ = F / k" : "F = k δ",
                asked.has(SpringSum.LOAD)
                        ? Figures.four(force.newtons()) + " / " + Figures.four(rate.newtonsPerMm())
                        : Figures.four(rate.newtonsPerMm()) + " × " + mm(down),
                asked.has(SpringSum.LOAD) ? LengthText.both(down, asked.unit()) : Figures.four(force.newtons()) + " N",
                SPRINGS);
    }

    Pressure stress(Force load) {
        Pressure stress = spring.stress(load);
        working.step(
                "Wahl's factor for the curve of the wire",
                "K = (4C − 1)/(4C − 4) + 0.615/C",
                "C = " + Figures.four(spring.index()),
                Figures.four(spring.wahl()),
                SPRINGS);
        working.step(
                "Greatest shear stress in the wire",
                "τ = K 8 F D / (π d³)",
                Figures.four(spring.wahl()) + " × 8 × " + Figures.four(load.newtons()) + " × " + mm(spring.mean())
                        + " / (π × " + mm(spring.wire()) + "³)",
                Figures.four(stress.megapascals()) + " MPa",
                SPRINGS);
        return stress;
    }

    Optional<Pressure> allowed(SpringWire wire) {
        Optional<Pressure> strength = wire.strength(spring.wire());
        if (strength.isEmpty()) {
            working.caution("No strength is tabled for " + wire.name() + " of this size, so none is allowed here.");
            return Optional.empty();
        }
        double allowed = wire.allowedShare() * strength.get().megapascals();
        working.step(
                "Allowed under a steady load",
                "τa = share × tensile strength of wire this thick",
                Figures.four(wire.allowedShare()) + " × "
                        + Figures.four(strength.get().megapascals()),
                Figures.four(allowed) + " MPa",
                SpringWire.source());
        return Optional.of(Pressure.megapascals(allowed));
    }

    double factor(Pressure allowed, Pressure stress) {
        double factor = allowed.megapascals() / stress.megapascals();
        working.step(
                "How much is in hand",
                "τa / τ",
                Figures.four(allowed.megapascals()) + " / " + Figures.four(stress.megapascals()),
                Figures.four(factor),
                Source.COMMON_PRACTICE);
        if (factor < 1) {
            working.caution("The wire is stressed more than is allowed: the spring will take a set.");
        }
        return factor;
    }

    /** The load that brings it solid, where the free length is given. */
    Optional<Force> solidLoad(SpringRate rate, Length solid) {
        return asked.find(SpringSum.FREE).map(free -> {
            if (!solid.isLessThan(free)) {
                throw Refusal.of(
                        SpringSum.FREE,
                        "the free length must be more than the solid one, " + LengthText.both(solid, asked.unit())
                                + ".");
            }
            var load = Force.newtons(rate.newtonsPerMm() * free.minus(solid).mm());
            working.step(
                    "Load that brings it solid",
                    "k (free − solid)",
                    Figures.four(rate.newtonsPerMm()) + " × (" + mm(free) + " − " + mm(solid) + ")",
                    Figures.four(load.newtons()) + " N",
                    SPRINGS);
            return load;
        });
    }

    private static String mm(Length length) {
        return LengthText.mmFigures(length, LengthText.MICROMETRE);
    }
}
