package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.List;

/** What rises from a stretch of the outside to the shoulders beside it: the radii of an old part's hollow corners. */
final class Shoulders {
    /** The most of a stretch that a radius may take up at either side. */
    private static final double MOST = 0.25;

    private Shoulders() {}

    /** The stretch without what rises at its ends. */
    static Span clear(Profile outside, Span stretch) {
        return Carving.within(outside, stretch)
                .map(within -> new Span(foot(within, End.A), foot(within, End.B)))
                .filter(clear -> clear.length().over(stretch.length()) >= 1 - 2 * MOST)
                .orElse(stretch);
    }

    /** Where the ground begins to rise towards an end. */
    private static Length foot(Profile within, End end) {
        List<Station> inward =
                end == End.A ? within.stations() : within.stations().reversed();
        int i = 0;
        while (i + 1 < inward.size()
                && inward.get(i + 1).radius().isLessThan(inward.get(i).radius())) {
            i++;
        }
        Length border = inward.getFirst().at();
        Length most = within.end().minus(within.start()).times(MOST);
        Length foot = inward.get(i).at();
        return foot.minus(border).abs().isMoreThan(most) ? border : foot;
    }
}
