package chargehand.trade.wear;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Entry;
import chargehand.trade.sum.Refusal;
import java.util.List;
import java.util.Optional;

/** Settles what is asked about a worn part: its readings as diameters, in agreement with the sizes given. */
final class CleanUpQuestion {
    /** Opposite readings lie within this of half a turn apart (degrees). */
    private static final double OPPOSITE = 1;

    /** A reading below this share of the largest is a slip of the pen. */
    private static final double SLIP = 0.5;

    /** Plated or built up, a part may be larger than new, but not by more than this. */
    private static final double GROWN = 1.1;

    private final Asked asked;
    private final List<Entry> entries;

    CleanUpQuestion(Asked asked) {
        this.asked = asked;
        entries = asked.get(CleanUpSum.READINGS);
    }

    boolean isByRadius() {
        return entries.getFirst().find(CleanUpSum.RADIUS).isPresent();
    }

    Survey survey() {
        for (Entry entry : entries) {
            boolean radius = entry.find(CleanUpSum.RADIUS).isPresent();
            if (radius == entry.find(CleanUpSum.DIAMETER).isPresent() || radius != isByRadius()) {
                throw Refusal.of(
                        CleanUpSum.READINGS,
                        "each reading gives a diameter, or each a radius: " + CleanUpSum.READINGS.hint());
            }
        }
        var survey = new Survey(entries.stream()
                .map(entry -> isByRadius() ? byRadius(entry) : byDiameter(entry))
                .toList());
        check(survey);
        return survey;
    }

    private static Reading byDiameter(Entry entry) {
        Length diameter = entry.get(CleanUpSum.DIAMETER);
        return new Reading(entry.get(CleanUpSum.STATION), entry.get(CleanUpSum.ANGLE), diameter, diameter);
    }

    private Reading byRadius(Entry entry) {
        Length radius = entry.get(CleanUpSum.RADIUS);
        String station = entry.get(CleanUpSum.STATION);
        Angle angle = entry.get(CleanUpSum.ANGLE);
        Length across = opposite(station, angle).map(radius::plus).orElse(radius.times(2));
        return new Reading(station, angle, across, radius.times(2));
    }

    private Optional<Length> opposite(String station, Angle angle) {
        return entries.stream()
                .filter(entry -> entry.get(CleanUpSum.STATION).equals(station))
                .filter(entry -> {
                    double apart = entry.get(CleanUpSum.ANGLE).degrees() - angle.degrees();
                    return Math.abs(Math.abs(Math.IEEEremainder(apart, 360)) - 180) <= OPPOSITE;
                })
                .findFirst()
                .map(entry -> entry.get(CleanUpSum.RADIUS));
    }

    private void check(Survey survey) {
        if (survey.worst().least().mm() < SLIP * survey.largestReading().mm()) {
            throw Refusal.of(
                    CleanUpSum.READINGS,
                    "the smallest reading is less than half of the largest: these are not of one diameter.");
        }
        asked.find(CleanUpSum.NEW_SIZE)
                .filter(size -> survey.largestReading().mm() < SLIP * size.mm())
                .ifPresent(size -> {
                    throw Refusal.of(CleanUpSum.NEW_SIZE, "the readings are less than half of this: check both.");
                });
        asked.find(CleanUpSum.NEW_SIZE)
                .filter(size -> survey.largestReading().mm() > GROWN * size.mm())
                .ifPresent(size -> {
                    throw Refusal.of(
                            CleanUpSum.NEW_SIZE, "a reading is larger than this by a tenth and more: check both.");
                });
        asked.find(CleanUpSum.LEAST)
                .filter(size -> survey.largestReading().mm() < SLIP * size.mm())
                .ifPresent(size -> {
                    throw Refusal.of(CleanUpSum.LEAST, "the readings are less than half of this: check both.");
                });
        if (asked.has(CleanUpSum.NEW_SIZE)
                && asked.has(CleanUpSum.LEAST)
                && asked.get(CleanUpSum.LEAST).isMoreThan(asked.get(CleanUpSum.NEW_SIZE))) {
            throw Refusal.of(CleanUpSum.LEAST, "the least size cannot be larger than the size when new.");
        }
    }
}
