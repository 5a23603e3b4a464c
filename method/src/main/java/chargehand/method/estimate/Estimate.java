package chargehand.method.estimate;

import chargehand.measure.WorkTime;
import chargehand.trade.sum.Step;
import java.util.List;
import java.util.Optional;

/**
 * What a method comes to, for a customer outside. It is no offer: the shop says what it asks.
 *
 * @param shares the time of each set-up by kind of work, for the whole count
 * @param time for the whole count
 * @param cost in the shop's money; empty where the kit gives no rates
 * @param missing what is not in the sum because nobody has said it, a sentence each
 * @param working how it adds up
 */
public record Estimate(
        List<Share> shares, TimeRange time, Optional<Cost> cost, List<String> missing, List<Step> working) {
    public Estimate {
        shares = List.copyOf(shares);
        missing = List.copyOf(missing);
        working = List.copyOf(working);
    }

    /**
     * Time, from the least to be hoped for to the most to be feared.
     *
     * @param likely as the method says
     */
    public record TimeRange(WorkTime least, WorkTime likely, WorkTime most) {
        TimeRange plus(TimeRange other) {
            return new TimeRange(least.plus(other.least), likely.plus(other.likely), most.plus(other.most));
        }
    }

    /** Money, likewise. */
    public record MoneyRange(double least, double likely, double most) {
        MoneyRange plus(MoneyRange other) {
            return new MoneyRange(least + other.least, likely + other.likely, most + other.most);
        }
    }

    /**
     * The time of one set-up for the whole count.
     *
     * @param setUp its number
     * @param machine its name in the kit
     * @param setting setting the machine up, once
     * @param handling loading, truing and unloading, changing tools, taking off burrs
     * @param cutting with the dials being set between passes
     * @param gauging measuring and writing down
     */
    public record Share(
            int setUp, String machine, WorkTime setting, WorkTime handling, WorkTime cutting, WorkTime gauging) {
        public WorkTime time() {
            return setting.plus(handling).plus(cutting).plus(gauging);
        }
    }

    /** A sum in the shop's money. */
    public record Amount(double amount) {}

    /**
     * What it costs.
     *
     * @param money what the shop's money is called
     * @param work hours of people and machines
     * @param material with what is put on it; empty where its price or its weight is not known
     * @param all together
     */
    public record Cost(String money, MoneyRange work, Optional<Amount> material, MoneyRange all) {}
}
