package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Lengths and callouts put round any view with an axis, kept clear of each other and of the view. */
public final class Annotations {
    private final View view;
    private final Board board;
    private final List<List<Placing>> ways = new ArrayList<>();

    /**
     * Nothing on a view yet.
     *
     * @param limits where sizes should stay, in the view's own frame
     */
    public Annotations(View view, Box limits) {
        this.view = view;
        board = new Board(view, limits);
    }

    /**
     * Puts lengths along the axis on one side, in tiers, their words clear of position 0 where something may stand.
     *
     * @param outline how far the view reaches from the axis there (mm)
     * @param reach how far what a length runs from reaches, at each of its ends (mm)
     */
    public Annotations lengths(
            List<AxialDimension> lengths, AxialScale scale, Side side, double outline, ToDoubleFunction<Length> reach) {
        List<Length> origin = List.of(Length.ZERO);
        new AxialTiers(scale, side).draw(lengths, origin, outline, reach).forEach(board::add);
        return this;
    }

    /**
     * Puts a callout on a leader, upward or downward as the points lie above or below the axis.
     *
     * @param tips where the arrow may touch
     * @param outline how far the view reaches from the axis (mm)
     */
    public Annotations callout(List<Point> tips, double outline, Wording wording, Ink ink) {
        LeaderWays leader = new LeaderWays(new Inscription(wording, Placing.HEIGHT, ink), 0);
        List<Placing> all = new ArrayList<>();
        for (Point tip : tips) {
            boolean upward = tip.y() <= 0;
            all.addAll(leader.past(List.of(tip), upward, upward ? -outline : outline));
        }
        ways.add(all);
        return this;
    }

    /** The view with everything placed. */
    public Dimensioned placed() {
        return new Dimensioned(view, Arranger.place(board, ways).placed(), List.of());
    }
}
