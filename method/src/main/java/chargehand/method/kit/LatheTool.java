package chargehand.method.kit;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Limits;

/** A tool for the lathe. */
public sealed interface LatheTool {
    /** What the shop calls it. */
    String name();

    /** What its edge is made of. */
    Edge edge();

    /**
     * A knife tool: turns to a square shoulder and faces.
     *
     * @param hand the way it cuts
     * @param nose radius of its point, and so the least radius it leaves in a corner
     */
    record Knife(String name, Edge edge, Hand hand, Length nose) implements LatheTool {}

    /**
     * A round-nosed tool: roughs, and leaves or forms a radius.
     *
     * @param radius of its nose
     */
    record RoundNose(String name, Edge edge, Length radius) implements LatheTool {}

    /** A tool for breaking or chamfering edges at 45°. */
    record Chamfering(String name, Edge edge) implements LatheTool {}

    /**
     * A boring bar.
     *
     * @param leastBore the least hole it enters
     * @param reach how deep it bores
     */
    record BoringBar(String name, Edge edge, Length leastBore, Length reach) implements LatheTool {}

    /**
     * A parting tool.
     *
     * @param width of its blade
     * @param depth how far in from the outside it reaches
     */
    record Parting(String name, Edge edge, Length width, Length depth) implements LatheTool {}

    /**
     * A grooving tool, square at the end.
     *
     * @param width of its blade
     * @param depth how far in from the outside it reaches
     */
    record Grooving(String name, Edge edge, Length width, Length depth) implements LatheTool {}

    /**
     * A screw-cutting tool ground to a form.
     *
     * @param angle included between the flanks, such as 55°
     * @param side outside or inside threads
     * @param pitches the finest and the coarsest pitch it cuts, as lengths
     */
    record ScrewCutter(String name, Edge edge, Angle angle, Side side, Limits pitches) implements LatheTool {}

    /**
     * A bar that carries a bit on its side, to plane slots along a bore with the spindle locked.
     *
     * @param leastBore the least bore it enters
     * @param reach how long a bore it goes through
     * @param widths to which its bits can be ground, flat or round
     */
    record Slotting(String name, Edge edge, Length leastBore, Length reach, Limits widths) implements LatheTool {}

    /**
     * A grooving tool for the inside, square at the end.
     *
     * @param width of its blade
     * @param depth how far into the wall it reaches
     * @param leastBore the least bore it enters
     * @param reach how far in from the end
     */
    record InsideGrooving(String name, Edge edge, Length width, Length depth, Length leastBore, Length reach)
            implements LatheTool {}

    /** What a tool's edge is made of. */
    enum Edge {
        HIGH_SPEED_STEEL,
        CARBIDE
    }

    /** The way a tool cuts. */
    enum Hand {
        /** Towards the headstock. */
        RIGHT,
        /** Towards the tailstock. */
        LEFT
    }

    /** Where a screw-cutting tool works. */
    enum Side {
        OUTSIDE,
        INSIDE
    }
}
