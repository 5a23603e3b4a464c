package chargehand.trade.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a lathe's quadrant can carry. Wheels of one set share a pitch of tooth, so the distance between the centres of two
 * wheels in mesh is told by their teeth together.
 *
 * <p>Two things can stop a train. The studs only slide so far: every two wheels in mesh must have at least
 * {@code leastTogether} and at most {@code mostTogether} teeth together. And a wheel must not foul the stud or shaft it
 * passes: on each stud the driver must clear the shaft that drives the stud, and the driven wheel must clear the shaft
 * that the stud drives. With {@value #STUD_IN_TEETH} teeth allowed for the stud's own half-thickness and nut, a pair a/b
 * followed by a pair c/d must have a + b ≥ c + {@value #STUD_IN_TEETH} and c + d ≥ b + {@value #STUD_IN_TEETH} (common
 * practice).
 *
 * @param leastTogether the fewest teeth two meshing wheels may have together
 * @param mostTogether the most teeth two meshing wheels may have together
 */
public record Quadrant(int leastTogether, int mostTogether) {
    /** Room for a stud, counted in teeth of the wheels it must clear. */
    public static final int STUD_IN_TEETH = 15;

    /** A quadrant long enough for anything: only the studs are in the way. */
    public static final Quadrant ROOMY = new Quadrant(1, Integer.MAX_VALUE);

    public Quadrant {
        if (leastTogether < 1 || mostTogether < leastTogether) {
            throw new IllegalArgumentException("the most teeth together must not be fewer than the least");
        }
    }

    /** Whether two wheels can be brought into mesh. */
    public boolean meshes(int driver, int driven) {
        return driver + driven >= leastTogether && driver + driven <= mostTogether;
    }

    /**
     * An order of the wheels that can be set up, if there is one. A single pair is bridged by an idler from the wheels
     * left over; only where none will do are its two wheels put straight into mesh.
     *
     * <p>Of a longer train one order need be tried: largest driver with smallest driven wheel first. It makes the teeth
     * together as even as they can be, so if any order lies within the limits this one does; and since drivers then only
     * get smaller and driven wheels larger along the train, each clears the next stud wherever wheels have
     * {@value #STUD_IN_TEETH} teeth or more.
     */
    public Optional<Arrangement> arrange(Train train, WheelSet owned) {
        return train.drivers().size() == 1 ? arrangeSimple(train, owned) : arrangeCompound(train);
    }

    private Optional<Arrangement> arrangeSimple(Train train, WheelSet owned) {
        int driver = train.drivers().getFirst();
        int driven = train.driven().getFirst();
        var pair = List.of(new Arrangement.Pair(driver, driven));
        var spare = new ArrayList<>(owned.teeth());
        spare.remove(Integer.valueOf(driver));
        spare.remove(Integer.valueOf(driven));
        Optional<Arrangement> bridged = spare.stream()
                .filter(idler -> meshes(driver, idler) && meshes(idler, driven))
                .findFirst()
                .map(idler -> new Arrangement(pair, Optional.of(idler)));
        return bridged.or(
                () -> meshes(driver, driven) ? Optional.of(new Arrangement(pair, Optional.empty())) : Optional.empty());
    }

    private Optional<Arrangement> arrangeCompound(Train train) {
        List<Integer> drivers = train.drivers().reversed();
        return fits(drivers, train.driven()) ? Optional.of(Arrangement.of(drivers, train.driven())) : Optional.empty();
    }

    private boolean fits(List<Integer> drivers, List<Integer> driven) {
        for (int pair = 0; pair < drivers.size(); pair++) {
            if (!meshes(drivers.get(pair), driven.get(pair))) {
                return false;
            }
            if (pair > 0 && !clears(drivers, driven, pair)) {
                return false;
            }
        }
        return true;
    }

    private static boolean clears(List<Integer> drivers, List<Integer> driven, int pair) {
        int before = drivers.get(pair - 1) + driven.get(pair - 1);
        int after = drivers.get(pair) + driven.get(pair);
        return before >= drivers.get(pair) + STUD_IN_TEETH && after >= driven.get(pair - 1) + STUD_IN_TEETH;
    }
}
