package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import java.util.List;

/**
 * The cutting list of several jobs.
 *
 * @param bars each bar that is cut into, with what comes out of it
 * @param unmet the jobs for which there is nothing, or nothing left
 * @param proved whether no other way of giving the pieces out uses less metal
 */
public record WeekList(List<Bar> bars, List<Unmet> unmet, boolean proved) {
    public WeekList {
        bars = List.copyOf(bars);
        unmet = List.copyOf(unmet);
    }

    /**
     * One bar.
     *
     * @param piece its entry on the rack
     * @param cuts what is cut from it
     * @param left what is left of it, what stays in the jaws counted in
     */
    public record Bar(Piece piece, List<Cut> cuts, Length left) {
        public Bar {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Pieces of one job.
     *
     * @param name of the job
     * @param each the bar that one takes, its cut counted in
     */
    public record Cut(String name, int pieces, Length each, Way way) {}

    /** A job that goes without. */
    public record Unmet(String name, String why) {}
}
