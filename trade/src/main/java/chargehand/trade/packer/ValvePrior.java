package chargehand.trade.packer;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.Notations;
import chargehand.measure.SpringRate;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Entry;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Optional;

/** What is known of a valve before it is tested: how the pressure changes with the packer. */
final class ValvePrior {
    /** Shear modulus of spring steel (MPa). */
    private static final double SHEAR_MODULUS = 79_300;

    /** Rate of a spring and area of a seat, each to about a tenth. */
    private static final double SPREAD = 0.15;

    /** Where nothing is known: springs shorten some 2 to 15 mm to the set pressure. */
    private static final double SHORTENS_MM = 4;

    private static final double VAGUE_SPREAD = 0.4;

    private static final double NEWTONS_PER_SQUARE_MM_TO_BAR = 10;

    private final Asked asked;
    private final Working working;

    ValvePrior(Asked asked, Working working) {
        this.asked = asked;
        this.working = working;
    }

    /** Pressure for thickness (bar/mm), of the sign that the packer acts with. */
    Bell rate() {
        double sign = asked.get(PackerSum.ADDS) ? 1 : -1;
        Optional<Entry> spring = asked.find(PackerSum.SPRING);
        Optional<Length> seat = asked.find(PackerSum.SEAT);
        if (spring.isPresent() && seat.isPresent()) {
            double rate = bySpring(springRate(spring.get()), seat.get());
            return new Bell(sign * rate, SPREAD * rate);
        }
        if (spring.isPresent() || seat.isPresent()) {
            throw Refusal.of(
                    spring.isPresent() ? PackerSum.SEAT : PackerSum.SPRING,
                    "spring and seat tell something only together: give both, or neither.");
        }
        double rate = asked.get(PackerSum.TARGET).bar() / SHORTENS_MM;
        working.fact(
                "Nothing is given of spring and seat; springs shorten some 2 to 15 mm to the set pressure",
                "about " + Figures.four(rate) + " bar/mm, more or less by half and more",
                Source.COMMON_PRACTICE);
        return new Bell(sign * rate, VAGUE_SPREAD * rate);
    }

    private double bySpring(SpringRate spring, Length seat) {
        double area = Math.PI / 4 * seat.mm() * seat.mm();
        double rate = NEWTONS_PER_SQUARE_MM_TO_BAR * spring.newtonsPerMm() / area;
        working.step(
                "Pressure for thickness, from spring and seat, to about 15 %",
                "k / (π d² / 4)",
                Figures.four(spring.newtonsPerMm()) + " N/mm / (π × " + Figures.four(seat.mm()) + "² / 4) mm²",
                Figures.four(rate) + " bar/mm",
                Source.GEOMETRY);
        return rate;
    }

    private SpringRate springRate(Entry spring) {
        Optional<SpringRate> given = spring.find(PackerSum.RATE);
        boolean sizes = spring.find(PackerSum.WIRE).isPresent()
                && spring.find(PackerSum.MEAN).isPresent()
                && spring.find(PackerSum.COILS).isPresent();
        if (given.isPresent() == sizes) {
            throw Refusal.of(
                    PackerSum.SPRING,
                    "give the rate, or wire, mean diameter and active coils: " + PackerSum.SPRING.hint());
        }
        return given.orElseGet(() -> bySizes(
                spring.get(PackerSum.WIRE).mm(),
                spring.get(PackerSum.MEAN).mm(),
                spring.get(PackerSum.COILS).value()));
    }

    private SpringRate bySizes(double wire, double mean, double coils) {
        if (wire >= mean) {
            throw Refusal.of(PackerSum.SPRING, "the wire must be thinner than the mean diameter of the coils.");
        }
        SpringRate rate = SpringRate.newtonsPerMm(SHEAR_MODULUS * Math.pow(wire, 4) / (8 * Math.pow(mean, 3) * coils));
        working.step(
                "Rate of the spring, of steel",
                "G d⁴ / (8 D³ n)",
                Figures.four(SHEAR_MODULUS) + " × " + Figures.four(wire) + "⁴ / (8 × " + Figures.four(mean) + "³ × "
                        + Figures.four(coils) + ")",
                Notations.SPRING_RATE.text(rate, asked.unit()),
                Source.memory("Wahl, Mechanical Springs"));
        return rate;
    }
}
