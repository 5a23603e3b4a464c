package chargehand.method.plan;

import chargehand.measure.WorkTime;
import chargehand.trade.sum.Step;
import java.util.List;

/**
 * How a part is made here.
 *
 * @param title the part's title
 * @param issue the issue of the drawing it was planned from
 * @param count how many are to be made
 * @param stock what it is made from
 * @param setUps in order, at least one
 * @param cautions what to mind throughout
 */
public record Method(String title, String issue, int count, StockUse stock, List<SetUp> setUps, List<String> cautions) {
    public Method {
        setUps = List.copyOf(setUps);
        cautions = List.copyOf(cautions);
        if (count < 1 || setUps.isEmpty()) {
            throw new IllegalArgumentException("a method makes at least one piece in at least one set-up");
        }
    }

    /** The time for the whole count: every setting once, every operation for each piece. */
    public WorkTime time() {
        return setUps.stream().map(setUp -> setUp.time(count)).reduce(WorkTime.ZERO, WorkTime::plus);
    }

    /**
     * Stock that was looked at and not taken.
     *
     * @param piece its name on the rack
     * @param why the reason, a plain sentence
     */
    public record PassedOver(String piece, String why) {}

    /**
     * The piece of stock and how it is used.
     *
     * @param piece its name on the rack
     * @param says what it is, for a person, such as "gunmetal LG2, 1 1/4 round, rack C2"
     * @param blank the raw work of one piece as it stands when set-up 1 begins
     * @param pieces how many parts come out of this one piece of stock
     * @param working why it was chosen and how the length adds up
     * @param passedOver the other pieces, each with the reason
     */
    public record StockUse(
            String piece, String says, Blank blank, int pieces, List<Step> working, List<PassedOver> passedOver) {
        public StockUse {
            working = List.copyOf(working);
            passedOver = List.copyOf(passedOver);
        }
    }
}
