package chargehand.trade.wheels;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** Keeps the best so many of all trains tried, the worst of them at hand. */
final class BestTrains {
    private final int howMany;
    private final PriorityQueue<Tried> worstFirst;
    private double widest = Double.POSITIVE_INFINITY;

    BestTrains(int howMany) {
        this.howMany = howMany;
        worstFirst = new PriorityQueue<>(Tried.BEST_FIRST.reversed());
    }

    /** The error beyond which no train can get in any more. */
    double widest() {
        return widest;
    }

    void offer(Tried tried) {
        worstFirst.add(tried);
        if (worstFirst.size() > howMany) {
            worstFirst.remove();
        }
        if (worstFirst.size() == howMany) {
            widest = worstFirst.element().error().abs().doubleValue();
        }
    }

    List<Tried> bestFirst() {
        return worstFirst.stream().sorted(Tried.BEST_FIRST).toList();
    }

    /** Whether a train as good as this would be kept. */
    boolean wouldKeep(Tried tried) {
        if (worstFirst.size() < howMany) {
            return true;
        }
        Comparator<Tried> order = Tried.BEST_FIRST;
        return order.compare(tried, worstFirst.element()) < 0;
    }
}
