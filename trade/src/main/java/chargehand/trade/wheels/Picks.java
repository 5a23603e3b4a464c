package chargehand.trade.wheels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Every way of picking so many wheels from a set, in the order of the product of their teeth, so that the picks whose
 * product lies nearest to a wanted one stand together.
 */
final class Picks {
    /**
     * Some of the wheels owned.
     *
     * @param product of their teeth
     * @param teeth in rising order
     */
    record Pick(long product, List<Integer> teeth) {}

    private final List<Pick> byProduct;
    private final long[] products;

    private Picks(List<Pick> byProduct) {
        this.byProduct = byProduct;
        products = byProduct.stream().mapToLong(Pick::product).toArray();
    }

    static Picks of(WheelSet set, int howMany) {
        var kinds = List.copyOf(set.counts().entrySet());
        var picks = new ArrayList<Pick>();
        pick(kinds, 0, howMany, new Pick(1, List.of()), picks);
        picks.sort(Comparator.comparingLong(Pick::product));
        return new Picks(picks);
    }

    private static void pick(
            List<Map.Entry<Integer, Integer>> kinds, int from, int howMany, Pick sofar, List<Pick> picks) {
        if (howMany == 0) {
            picks.add(sofar);
            return;
        }
        if (from == kinds.size()) {
            return;
        }
        int teeth = kinds.get(from).getKey();
        Pick taken = sofar;
        for (int copies = 0; copies <= Math.min(howMany, kinds.get(from).getValue()); copies++) {
            pick(kinds, from + 1, howMany - copies, taken, picks);
            taken = with(taken, teeth);
        }
    }

    private static Pick with(Pick pick, int teeth) {
        var more = new ArrayList<>(pick.teeth());
        more.add(teeth);
        return new Pick(pick.product() * teeth, List.copyOf(more));
    }

    Pick get(int index) {
        return byProduct.get(index);
    }

    /** The product of the teeth of the pick at this place in the order. */
    long product(int index) {
        return products[index];
    }

    int size() {
        return products.length;
    }
}
