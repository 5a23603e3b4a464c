package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.trade.thread.ScrewThread;
import java.util.List;

/**
 * How much deeper than the full thread or the reamed length a blind hole is drilled so that tap or reamer can finish it
 * (common practice). Where the description has a drilled hole of its own for it, that one says how deep.
 */
public final class ToolRoom {
    /** Pitches beyond the full thread for a tap's lead and the chips. */
    public static final int TAP_PITCHES = 5;

    /** Diameters beyond the reamed length for a reamer's lead. */
    public static final double REAMER_DIAMETERS = 0.5;

    /** A hole below this share of the reamed size is no pilot for the reamer but a hole of its own. */
    private static final double LEAST_PILOT = 0.9;

    private ToolRoom() {}

    /** The room beyond a bore's own depth; zero where it needs none or another bore makes it. */
    public static Length beyond(Bore bore, Body.Turned body) {
        return switch (bore) {
            case Bore.Drilled drilled -> Length.ZERO;
            case Bore.Bored bored -> Length.ZERO;
            case Bore.Counterbored counterbored -> Length.ZERO;
            case Bore.Coned coned -> Length.ZERO;
            case Bore.Tapped tapped -> room(tapped, forTap(tapped.thread()), tappingHoles(tapped, body));
            case Bore.Reamed reamed -> room(reamed, forReamer(reamed.diameter().length()), pilotHoles(reamed, body));
        };
    }

    /** The room beyond a blind full thread. */
    public static Length forTap(ScrewThread thread) {
        return thread.pitch().length().times(TAP_PITCHES);
    }

    /** The room beyond a blind reamed length. */
    public static Length forReamer(Length diameter) {
        return diameter.times(REAMER_DIAMETERS);
    }

    private static Length room(Bore bore, Length needed, List<Bore.Drilled> drilled) {
        return switch (bore.depth()) {
            case Depth.Through() -> Length.ZERO;
            case Depth.Blind blind -> drilled.isEmpty() ? needed : Length.ZERO;
        };
    }

    /** The drilled holes that a tapped one may be meant to sit in: from the same end, of a size that a tap enters. */
    public static List<Bore.Drilled> tappingHoles(Bore.Tapped tapped, Body.Turned body) {
        return drilled(tapped, body).stream()
                .filter(hole -> isTappingSize(tapped, hole.diameter().length()))
                .toList();
    }

    private static boolean isTappingSize(Bore.Tapped tapped, Length diameter) {
        Length least =
                tapped.thread().minorInternal().minus(tapped.thread().depth().half());
        return diameter.isMoreThan(least) && diameter.isLessThan(tapped.thread().major());
    }

    /** The drilled holes from the same end that are a little smaller than a reamed one. */
    public static List<Bore.Drilled> pilotHoles(Bore.Reamed reamed, Body.Turned body) {
        Length most = reamed.diameter().length();
        Length least = most.times(LEAST_PILOT);
        return drilled(reamed, body).stream()
                .filter(hole -> !hole.diameter().length().isMoreThan(most)
                        && !hole.diameter().length().isLessThan(least))
                .toList();
    }

    private static List<Bore.Drilled> drilled(Bore bore, Body.Turned body) {
        return body.inside().stream()
                .filter(Bore.Drilled.class::isInstance)
                .map(Bore.Drilled.class::cast)
                .filter(hole -> hole.from() == bore.from())
                .toList();
    }
}
