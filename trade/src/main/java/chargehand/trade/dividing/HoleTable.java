package chargehand.trade.dividing;

import chargehand.measure.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where the crank's pin goes for each division when every position is counted from the start, each in the hole nearest to
 * it. Errors then never add up: the worst is half a hole, where repeating one rounded move would carry the error round.
 *
 * @param circle holes in the circle
 * @param places one for every division
 */
public record HoleTable(int circle, List<Place> places) {
    private static final int DEGREES_IN_TURN = 360;

    public HoleTable {
        places = List.copyOf(places);
    }

    /**
     * One division.
     *
     * @param division its number, from 1; the work starts at division 0 with the pin in hole 0
     * @param turns whole turns from the start
     * @param hole the hole, counted from the start hole in the way the crank turns
     * @param error how far the work is past its true place; negative for short of it
     */
    public record Place(int division, int turns, int hole, Angle error) {}

    /** The places of all divisions in one circle. */
    public static HoleTable of(Dividing head, int divisions, int circle) {
        BigFraction crank = head.crankFor(divisions);
        var places = new ArrayList<Place>();
        for (int division = 1; division <= divisions; division++) {
            BigFraction wanted = crank.multiply(division);
            Way.Plain way = Way.Plain.of(Whole.nearest(wanted.multiply(circle)), circle);
            BigFraction error = way.crank().subtract(wanted).divide(head.worm());
            places.add(new Place(
                    division,
                    way.turns(),
                    way.holes(),
                    Angle.degrees(error.multiply(DEGREES_IN_TURN).doubleValue())));
        }
        return new HoleTable(circle, places);
    }

    /** The table in the circle that errs least, the smallest of those that err alike. */
    public static HoleTable best(Dividing head, int divisions) {
        return head.circles().stream()
                .map(circle -> of(head, divisions, circle))
                .min(Comparator.comparing(HoleTable::worst))
                .orElseThrow();
    }

    /** The most that any place is off, without its sign. */
    public Angle worst() {
        return places.stream()
                .map(place -> Angle.degrees(Math.abs(place.error().degrees())))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}
