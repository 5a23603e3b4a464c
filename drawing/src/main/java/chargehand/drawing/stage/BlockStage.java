package chargehand.drawing.stage;

import chargehand.measure.Length;
import java.util.List;

/**
 * A block in a machine vice, seen along the jaws and square to them, or clamped down on a table.
 *
 * @param title what the picture shows, for those who cannot see it
 * @param rest what it rests in
 * @param along its size along the jaws
 * @param between its size between the jaws
 * @param high its size upright when the set-up is done
 * @param stock its size upright before
 * @param above how far the finished top stands above the jaws
 * @param top whether the top face is cut in this set-up
 * @param holes made in this set-up from the top
 * @param label what the top is called out as; empty for none
 */
public record BlockStage(
        String title,
        Rest rest,
        Length along,
        Length between,
        Length high,
        Length stock,
        Length above,
        boolean top,
        List<HoleBelow> holes,
        String label) {
    public BlockStage {
        holes = List.copyOf(holes);
    }

    /** In a vice. */
    public BlockStage(
            String title,
            Length along,
            Length between,
            Length high,
            Length stock,
            Length above,
            boolean top,
            List<HoleBelow> holes,
            String label) {
        this(title, new Rest.Vice(), along, between, high, stock, above, top, holes, label);
    }

    /** What a block rests in. */
    public sealed interface Rest {
        /** A machine vice. */
        record Vice() implements Rest {}

        /**
         * A table, clamped down; an edge that stands out over a slot is the one to be cut.
         *
         * @param between which edges stand out in the view along the jaws
         * @param along which edges stand out in the view square to that
         */
        record Table(Out between, Out along) implements Rest {}
    }

    /** Whether the edge at the left and that at the right of a view stand out. */
    public record Out(boolean left, boolean right) {}

    /**
     * A hole from the top.
     *
     * @param at its middle along the jaws, from the block's left end as it lies
     * @param depth how far down it goes, the block's whole height where it goes through
     * @param label what it is called out as; empty for none
     */
    public record HoleBelow(Length at, Length diameter, Length depth, String label) {}
}
