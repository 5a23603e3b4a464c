package chargehand.method.holding;

import chargehand.measure.WorkTime;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.plan.Holding;

/**
 * What a holding costs in time: to set the machine up for it once, and to load, true and unload one piece. Shop estimates
 * of ours until the shop's own times are learnt.
 */
final class Costing {
    /** Drawing a bar out takes about this much of the time of loading a loose piece. */
    private static final double DRAWING_OUT = 0.5;

    private Costing() {}

    static Choice.Costs minutes(double setting, double loading) {
        return new Choice.Costs(WorkTime.minutes(setting), WorkTime.minutes(loading));
    }

    static Choice.Costs jaws(Chuck chuck, Holding.Support support) {
        return chuck.isIndependent() ? dialled(support) : selfCentring(support);
    }

    /** The plate is put on, and each piece clamped, dialled and balanced. */
    static Choice.Costs faceplate() {
        return minutes(14, 12);
    }

    /** The bush is turned, bored, slit and cleaned first. */
    static Choice.Costs splitBush(Holding.Support support) {
        return minutes(50 + supportMinutes(support), 1 + loadingMinutes(support));
    }

    /** Soft jaws are put on and bored to the work first. */
    static Choice.Costs softJaws(Holding.Support support) {
        return minutes(18 + supportMinutes(support), 0.7 + loadingMinutes(support));
    }

    private static Choice.Costs selfCentring(Holding.Support support) {
        return minutes(4 + supportMinutes(support), 0.7 + loadingMinutes(support));
    }

    /** Each piece is dialled true. */
    private static Choice.Costs dialled(Holding.Support support) {
        return minutes(6 + supportMinutes(support), 6);
    }

    static Choice.Costs collet(Holding.Support support) {
        return minutes(5 + supportMinutes(support), 0.4 + loadingMinutes(support));
    }

    static Choice.Costs centres() {
        return minutes(8, 1.5);
    }

    static Choice.Costs mandrel(Mandrel mandrel) {
        return switch (mandrel.kind()) {
            case TAPER -> minutes(8, 2);
            case EXPANDING -> minutes(8, 1.2);
            case STUB -> minutes(24, 1.2);
        };
    }

    static Choice.Costs dividingHead(boolean dialled) {
        return minutes(20, dialled ? 7 : 1.5);
    }

    static Choice.Costs vees() {
        return minutes(6, 1.5);
    }

    static Choice.Costs millVice() {
        return minutes(10, 1.5);
    }

    /** The same where the work is the end of a bar, which is only drawn out to a stop for the next piece. */
    static Choice.Costs onBar(Choice.Costs costs) {
        return new Choice.Costs(costs.setting(), costs.loading().times(DRAWING_OUT));
    }

    private static double supportMinutes(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> 0;
            case Holding.Support.Centre centre -> 2;
            case Holding.Support.TravellingSteady steady -> 8;
            case Holding.Support.FixedSteady steady -> 10;
        };
    }

    private static double loadingMinutes(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> 0;
            case Holding.Support.Centre centre -> 0.5;
            case Holding.Support.TravellingSteady steady -> 0.5;
            case Holding.Support.FixedSteady steady -> 2;
        };
    }
}
