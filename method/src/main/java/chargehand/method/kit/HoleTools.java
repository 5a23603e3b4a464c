package chargehand.method.kit;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.drill.Drill;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What makes holes.
 *
 * @param drills every twist drill owned, put in rising order of size
 * @param centreDrills centre drills, put in rising order of body
 * @param reamers put in rising order of size
 * @param taps for inside threads
 * @param countersinks for mouths of holes and cones
 */
public record HoleTools(
        List<Drill> drills,
        List<CentreDrill> centreDrills,
        List<Reamer> reamers,
        List<Tap> taps,
        List<Countersink> countersinks) {
    public HoleTools {
        drills = drills.stream().sorted(Comparator.comparing(Drill::diameter)).toList();
        centreDrills = centreDrills.stream()
                .sorted(Comparator.comparing(CentreDrill::body))
                .toList();
        reamers =
                reamers.stream().sorted(Comparator.comparing(Reamer::diameter)).toList();
        taps = List.copyOf(taps);
        countersinks = List.copyOf(countersinks);
    }

    /** The largest drill not above a size. */
    public Optional<Drill> drillNotAbove(Length most) {
        return drills.reversed().stream()
                .filter(drill -> !drill.diameter().isMoreThan(most))
                .findFirst();
    }

    /** The tap for a thread, by its designation as the thread series writes it. */
    public Optional<Tap> findTap(String thread) {
        return taps.stream().filter(tap -> tap.thread().equals(thread)).findFirst();
    }

    /**
     * A centre drill.
     *
     * @param designation as stamped, such as "BS 3"
     * @param body the diameter of its body
     * @param pilot the diameter of its point
     */
    public record CentreDrill(String designation, Length body, Length pilot) {}

    /**
     * A reamer.
     *
     * @param designation as stamped
     * @param diameter nominal
     * @param makes the hole it makes, an ISO 286 code such as {@code H7}
     */
    public record Reamer(String designation, Length diameter, String makes) {}

    /**
     * A tap or set of taps.
     *
     * @param thread the thread's designation, such as {@code 1/2 BSW}
     * @param bottoming whether a plug tap is owned that cuts to near the bottom of a blind hole
     */
    public record Tap(String thread, boolean bottoming) {}

    /**
     * A countersink.
     *
     * @param angle included
     * @param largest the largest mouth it cuts
     */
    public record Countersink(Angle angle, Length largest) {}
}
