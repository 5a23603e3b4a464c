package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Set;

/** Fundamental deviations of holes, made from those of shafts by the rules of ISO 286-1. */
final class HoleDeviations {
    private static final Source RULE = Source.memory("ISO 286-1:2010, fundamental deviations for holes");
    private static final Set<String> TRANSITION = Set.of("k", "m", "n");
    private static final int FINEST_WITH_STEP = 3;
    private static final int COARSEST_TRANSITION = 8;
    private static final int COARSEST_INTERFERENCE = 7;
    private static final Length SMALLEST_RANGE = Length.mm(3);
    private static final Length LARGEST_WITH_STEP = Length.mm(500);
    private static final Length LEAST_FOR_COARSE_N = Length.mm(1);

    /** The one figure that the standard's table gives otherwise than its rule does: M6 over 250 to 315 mm. */
    private static final SizeRange M6_RANGE = new SizeRange(Length.mm(250), Length.mm(315));

    private static final Length M6_UPPER = Microns.of(-9);

    private HoleDeviations() {}

    static Deviation of(Length nominal, ToleranceClass wanted, Working working) {
        return switch (wanted.letter()) {
            case "js" ->
                Deviation.lower(
                        ShaftDeviations.halfGrade(nominal, wanted, working).negated());
            case "j" -> Deviation.upper(ShaftDeviations.unruly(nominal, wanted, working));
            case "k" -> upper(nominal, wanted, kNegated(nominal, wanted), working);
            case "n" -> upper(nominal, wanted, nNegated(nominal, wanted), working);
            default -> mirrored(nominal, wanted, working);
        };
    }

    private static Deviation mirrored(Length nominal, ToleranceClass wanted, Working working) {
        Deviation mirrored = ShaftDeviations.listed(nominal, wanted).mirrored();
        return switch (mirrored.end()) {
            case UPPER -> upper(nominal, wanted, mirrored.value(), working);
            case LOWER -> {
                working.step(
                        "Lower deviation of hole " + wanted + ": shaft " + wanted.letter() + " turned over",
                        "EI = − es",
                        "−(" + Microns.plain(mirrored.value().negated()) + ")",
                        Microns.signed(mirrored.value()),
                        ShaftDeviations.source());
                yield mirrored;
            }
        };
    }

    private static Length kNegated(Length nominal, ToleranceClass wanted) {
        if (wanted.grade() > COARSEST_TRANSITION && stepsLieBetween(nominal)) {
            throw ShaftDeviations.notGiven(wanted);
        }
        return stepped(nominal, wanted)
                ? ShaftDeviations.k(nominal, COARSEST_INTERFERENCE).negated()
                : Length.ZERO;
    }

    /** N coarser than grade 8 starts at the nominal size between 3 and 500 mm. */
    private static Length nNegated(Length nominal, ToleranceClass wanted) {
        boolean coarse = wanted.grade() > COARSEST_TRANSITION;
        if (coarse && !nominal.isMoreThan(LEAST_FOR_COARSE_N)) {
            throw ShaftDeviations.notGiven(wanted);
        }
        return coarse && stepsLieBetween(nominal)
                ? Length.ZERO
                : ShaftDeviations.listed(nominal, wanted).value().negated();
    }

    private static Deviation upper(Length nominal, ToleranceClass wanted, Length negated, Working working) {
        if (wanted.grade() < FINEST_WITH_STEP && stepsLieBetween(nominal)) {
            throw ShaftDeviations.notGiven(wanted);
        }
        if (!stepped(nominal, wanted)) {
            working.step(
                    "Upper deviation of hole " + wanted + ": shaft " + wanted.letter() + " turned over",
                    "ES = − ei",
                    "−(" + Microns.plain(negated.negated()) + ")",
                    Microns.signed(negated),
                    RULE);
            return Deviation.upper(negated);
        }
        return Deviation.upper(withStep(nominal, wanted, negated, working));
    }

    private static Length withStep(Length nominal, ToleranceClass wanted, Length negated, Working working) {
        if (wanted.letter().equals("m") && wanted.grade() == 6 && M6_RANGE.contains(nominal)) {
            working.fact(
                    "Upper deviation of hole M6 over 250 to 315 mm, which the standard gives outside its rule",
                    "ES = " + Microns.signed(M6_UPPER),
                    RULE);
            return M6_UPPER;
        }
        Length step = StandardTolerances.of(nominal, wanted.grade())
                .minus(StandardTolerances.of(nominal, wanted.grade() - 1));
        Length upper = negated.plus(step);
        working.step(
                "Upper deviation of hole " + wanted + ": shaft " + wanted.letter() + " turned over and moved by Δ",
                "ES = − ei + Δ,  Δ = " + wanted.gradeName() + " − " + ToleranceClass.gradeName(wanted.grade() - 1),
                "−(" + Microns.plain(negated.negated()) + ") + " + Microns.plain(step),
                Microns.signed(upper),
                RULE);
        return upper;
    }

    /** Whether Δ applies: over 3 to 500 mm, from grade 3, K to N up to grade 8 and P to ZC up to grade 7. */
    private static boolean stepped(Length nominal, ToleranceClass wanted) {
        int coarsest = TRANSITION.contains(wanted.letter()) ? COARSEST_TRANSITION : COARSEST_INTERFERENCE;
        return stepsLieBetween(nominal) && wanted.grade() >= FINEST_WITH_STEP && wanted.grade() <= coarsest;
    }

    private static boolean stepsLieBetween(Length nominal) {
        return nominal.isMoreThan(SMALLEST_RANGE) && !nominal.isMoreThan(LARGEST_WITH_STEP);
    }
}
