package chargehand.method.replay;

import chargehand.method.aim.Aim;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.part.Body;
import chargehand.part.Part;

/**
 * Proves a method: starts from its blank, applies set-up after set-up and operation after operation as they are written,
 * checks every holding, cut and setting against the work as it stands and against the kit, and compares what comes out
 * with the part, its toleranced diameters at the middle of their limits.
 *
 * <p>It reads the method and nothing else of whoever planned it. Positions where cuts meet are rounded to the nearest
 * nanometre and arcs are chords within a fifth of a micrometre, so that a method which makes the part comes out within
 * {@link Deviation#ALLOWED} of it.
 */
public final class Replay {
    private Replay() {}

    /**
     * Carries out a method.
     *
     * @param part checked and free of faults
     * @param method any method, however wrong
     * @param kit what the shop has
     */
    public static Proof of(Part part, Method method, Kit kit) {
        var faults = new FaultList(part.unit());
        return switch (Aim.at(part).body()) {
            case Body.Turned turned ->
                TurnedReplay.of(new TurnedReplay.Asked(turned, part.ties()), method, kit, faults);
            case Body.Block block -> BlockReplay.of(block, method, kit, faults);
        };
    }
}
