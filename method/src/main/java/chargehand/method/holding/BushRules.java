package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.plan.Holding;
import chargehand.trade.holding.SplitBush;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import java.util.Optional;

/** The split bush for a diameter: as thick as is usual, if it closes on the work without taking a set. */
final class BushRules {
    /** How much larger its bore is than the work. */
    private static final double CLEARANCE_MM = 0.05;

    /** Mild steel is at hand in every shop, and as weak as any that is used. */
    private static final String MADE_OF = "EN3";

    private BushRules() {}

    /** Nothing where no bush closes on the work, or the jaws do not close on the bush. */
    static Optional<Holding.Bearing> find(Chuck chuck, Holding.Grip grip) {
        double work = grip.diameter().mm();
        double wall = (Math.ceil(work + CLEARANCE_MM + 2 * SplitBush.usualWall(work)) - work - CLEARANCE_MM) / 2;
        Material material = Materials.get(MADE_OF);
        var bush = new SplitBush(work, CLEARANCE_MM, wall, grip.length().mm(), material);
        Length outside = Length.mm(work + CLEARANCE_MM + 2 * wall);
        boolean closes = bush.closingStress() <= bush.allowedStress() && !chuck.isIndependent();
        return closes && chuck.grips(outside)
                ? Optional.of(new Holding.Bearing.SplitBush(outside, Length.mm(bush.slit())))
                : Optional.empty();
    }
}
