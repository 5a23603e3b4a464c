package chargehand.method.proved;

import chargehand.measure.Length;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.proved.ProvedPlanner.Outcome;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What must be made before a method can be carried out: the split bushes that work is held in, each a small part of its own,
 * planned from the rack and proved like any other. The slit is sawn by hand after, as the set-up says.
 */
final class Aids {
    /** What a bush is made of, the first of these that the rack has large enough. */
    private static final List<String> METALS = List.of("EN3", "EN8", "LG2", "PB1");

    private final ProvedPlanner planner;

    Aids(ProvedPlanner planner) {
        this.planner = planner;
    }

    /** The aids of a method, in the order of its set-ups. */
    List<Aid> of(Method method) {
        return method.setUps().stream().flatMap(setUp -> bush(setUp).stream()).toList();
    }

    private Optional<Aid> bush(SetUp setUp) {
        return setUp.holding() instanceof Holding.InChuck chuck
                        && chuck.bearing() instanceof Holding.Bearing.SplitBush bush
                ? Optional.of(bush(setUp.number(), chuck.grip(), bush))
                : Optional.empty();
    }

    private Aid bush(int setUp, Holding.Grip grip, Holding.Bearing.SplitBush bush) {
        for (String metal : METALS) {
            Part part = part(metal, grip, bush);
            if (planner.plan(part, 1) instanceof Outcome.Proved proved) {
                return new Aid(setUp, part, Optional.of(new Aid.Made(proved.method(), proved.proof())));
            }
        }
        return new Aid(setUp, part(METALS.getFirst(), grip, bush), Optional.empty());
    }

    private static Part part(String metal, Holding.Grip grip, Holding.Bearing.SplitBush bush) {
        String text =
                String.format(Locale.ROOT, """
                part: Split bush
                unit: mm
                material: %s
                general: ISO 2768-m
                outside: [{round: %s, name: outside, length: %s}]
                inside: [{bore: "%s +0.04/+0.02", name: bore}]
                ties: [{run-out: 0.02, of: bore, to: outside}]
                notes: ["Mark jaw 1, then saw through along one side."]
                """, metal, mm(bush.outside()), mm(grip.length()), mm(grip.diameter()));
        return switch (PartFile.read(text)) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty ->
                throw new IllegalStateException("a bush that cannot be drawn: " + faulty.faults());
        };
    }

    private static String mm(Length length) {
        return BigDecimal.valueOf(length.mm())
                .setScale(3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
