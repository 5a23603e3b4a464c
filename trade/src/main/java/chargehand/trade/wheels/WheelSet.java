package chargehand.trade.wheels;

import java.util.Collections;
import java.util.List;
import java.util.TreeMap;

/**
 * The change wheels owned, by their teeth; a wheel owned twice stands twice.
 *
 * @param teeth of every wheel, in rising order
 */
public record WheelSet(List<Integer> teeth) {
    /** The fewest teeth a wheel can have and still run. */
    public static final int FEWEST_TEETH = 10;

    /** More teeth than any change wheel has. */
    public static final int MOST_TEETH = 400;

    /** More wheels than any shop owns for one lathe, and few enough to try every train of them. */
    public static final int MOST_WHEELS = 60;

    public WheelSet {
        teeth = teeth.stream().sorted().toList();
        if (teeth.isEmpty() || teeth.size() > MOST_WHEELS) {
            throw new IllegalArgumentException("a set has 1 to " + MOST_WHEELS + " wheels, not " + teeth.size());
        }
        if (teeth.getFirst() < FEWEST_TEETH || teeth.getLast() > MOST_TEETH) {
            throw new IllegalArgumentException(
                    "a wheel has " + FEWEST_TEETH + " to " + MOST_TEETH + " teeth, so not " + teeth);
        }
    }

    public static WheelSet of(Integer... teeth) {
        return new WheelSet(List.of(teeth));
    }

    /** How many wheels of each number of teeth there are. */
    public TreeMap<Integer, Integer> counts() {
        var counts = new TreeMap<Integer, Integer>();
        teeth.forEach(each -> counts.merge(each, 1, Integer::sum));
        return counts;
    }

    /** How many wheels have so many teeth. */
    public int count(int wanted) {
        return Collections.frequency(teeth, wanted);
    }
}
