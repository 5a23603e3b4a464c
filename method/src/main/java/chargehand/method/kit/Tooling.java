package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import java.util.List;
import java.util.Optional;

/**
 * The tools the shop owns beside its machines.
 *
 * @param latheTools turning, boring, parting, grooving and screw-cutting tools
 * @param holeTools drills, reamers, taps and what else makes holes
 * @param dies for outside threads
 * @param tailstockDieHolder the largest thread diameter that the sliding die holder in the tailstock takes; empty without one
 * @param millCutters for the mill
 * @param mandrels for work with a finished bore
 * @param gauges what sizes are read with
 * @param deburring what burrs are taken off with, in words
 */
public record Tooling(
        List<LatheTool> latheTools,
        HoleTools holeTools,
        List<Die> dies,
        Optional<Length> tailstockDieHolder,
        List<MillCutter> millCutters,
        List<Mandrel> mandrels,
        List<Gauge> gauges,
        List<String> deburring) {
    public Tooling {
        latheTools = List.copyOf(latheTools);
        dies = List.copyOf(dies);
        millCutters = List.copyOf(millCutters);
        mandrels = List.copyOf(mandrels);
        gauges = List.copyOf(gauges);
        deburring = List.copyOf(deburring);
    }

    /** The lathe tools of one kind, in the order of the file. */
    public <T extends LatheTool> List<T> latheTools(Class<T> kind) {
        return latheTools.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The milling cutters of one kind, in the order of the file. */
    public <C extends MillCutter> List<C> millCutters(Class<C> kind) {
        return millCutters.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The gauges of one kind, in the order of the file. */
    public <G extends Gauge> List<G> gauges(Class<G> kind) {
        return gauges.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The die for a thread, by its designation as the thread series writes it. */
    public Optional<Die> findDie(String thread) {
        return dies.stream().filter(die -> die.thread().equals(thread)).findFirst();
    }

    /**
     * A die.
     *
     * @param thread the thread's designation, such as {@code 1/2 BSW}
     * @param kind split, so that it can be opened for a first cut, or solid
     */
    public record Die(String thread, DieKind kind) {}

    /** The kinds of dies. */
    public enum DieKind {
        /** A round die split on one side, opened and closed by screws. */
        SPLIT,
        /** A die nut or solid die, for clearing threads or one-cut work. */
        SOLID
    }

    /**
     * A mandrel.
     *
     * @param name what the shop calls it
     * @param kind how it holds, and what it is carried by
     * @param bore the least bore it enters and the most it still holds
     * @param length that bears in the work
     * @param runOut the total indicator reading as measured
     */
    public record Mandrel(String name, MandrelKind kind, Limits bore, Length length, Length runOut) {}

    /** The kinds of mandrels. */
    public enum MandrelKind {
        /** Ground to a slow taper, pressed into the bore, and carried between centres. */
        TAPER,
        /** Opened in the bore by a cone, and carried between centres. */
        EXPANDING,
        /** A slug in the chuck, turned where it is to fit the bore, slit, and opened by a taper screw. */
        STUB
    }
}
