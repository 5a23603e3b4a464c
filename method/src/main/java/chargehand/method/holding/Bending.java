package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Holding;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;

/**
 * How far work that stands out of its holding bends from the tool under a finishing cut, so that it turns larger than set.
 * The stretch is taken as a plain bar of the same slenderness, and what holds it as stiff.
 */
final class Bending {
    private static final Source BEAMS = Source.published("strength of materials: bending of beams");

    /** Share of the force along the cut that pushes work and tool apart (common practice). */
    private static final double APART = 0.5;

    private static final Length FINISHING_DEPTH = Length.mm(0.25);
    private static final Length FINISHING_FEED = Length.mm(0.1);

    /** Held at one end and loaded at the other; held at one end, borne at the other, loaded half way. */
    private static final double FREE = 1.0 / 3;

    private static final double ON_CENTRE = 7.0 / 768;

    /** Less than this no shop measures. */
    private static final Length WORTH_TELLING = Length.mm(0.001);

    private final Material material;

    Bending(Material material) {
        this.material = material;
    }

    /** How far the work bends where it is weakest, held with this support. */
    Length of(Overhang stretch, Holding.Support support) {
        return Length.mm(
                switch (support) {
                    case Holding.Support.None none -> FREE * bar(stretch);
                    case Holding.Support.FixedSteady steady -> FREE * bar(stretch);
                    case Holding.Support.Centre centre -> ON_CENTRE * bar(stretch);
                    case Holding.Support.TravellingSteady steady -> 0;
                });
    }

    /** F L³ / (E I) in millimetres, I = π d⁴ / 64. */
    private double bar(Overhang stretch) {
        double length = stretch.length().mm();
        double inertia = Math.PI * Math.pow(thickness(stretch), 4) / 64;
        double stiffness = material.physical().elasticModulus().megapascals() * inertia;
        return length > 0 ? force() * Math.pow(length, 3) / stiffness : 0;
    }

    private static double thickness(Overhang stretch) {
        return stretch.length().mm() / stretch.slenderness();
    }

    /** The push of a finishing cut across the work (N). */
    private double force() {
        double perArea = material.kienzle()
                .map(law -> law.specificForce(FINISHING_FEED).megapascals())
                .orElse(Walls.MIDDLING_FORCE);
        return APART * perArea * FINISHING_DEPTH.mm() * FINISHING_FEED.mm();
    }

    /** For whoever asks; nothing where nothing bends that a shop could measure. */
    List<Step> working(Overhang stretch, Holding.Support support, LengthUnit unit) {
        Length bends = of(stretch, support);
        if (bends.isLessThan(WORTH_TELLING)) {
            return List.of();
        }
        var working = new Working();
        working.step(
                "How far it bends from the tool in a finishing cut, where it is weakest; it turns larger by twice as much",
                support instanceof Holding.Support.Centre ? "y = 7 F L³ / (768 E I)" : "y = F L³ / (3 E I)",
                String.format(
                        Locale.ROOT,
                        "F = %.0f N, L = %.1f mm, as thick as a bar of %.1f mm",
                        force(),
                        stretch.length().mm(),
                        thickness(stretch)),
                LengthText.both(bends, unit),
                BEAMS);
        return working.steps();
    }
}
