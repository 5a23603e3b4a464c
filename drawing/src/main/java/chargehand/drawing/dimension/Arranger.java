package chargehand.drawing.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Chooses among the ways of placing each size: first one after the other, each where it lies best among those before it, then
 * round and round, each where it lies best among all others, singly and two by two, until nothing gets better. Where they
 * still lie badly, this is done again in other orders and the best outcome is kept; the orders are fixed, so the same part is
 * always drawn the same.
 */
final class Arranger {
    private static final int ROUNDS = 6;

    /** How often what lies worst is placed first and the rest after it. */
    private static final int AGAIN = 1;

    /** So much that sizes cost each other is worth no second try: a leader or two over an extension line. */
    private static final double PEACE = 100;

    /** Two sizes that cost each other more than this are moved together. */
    private static final double QUARREL = 15;

    /** A size that costs the others more than this is moved with any of them. */
    private static final double STUBBORN = 200;

    /** More stubborn sizes than this are left where they are: there is no room for them. */
    private static final int FEW = 4;

    /** Sizes that cost each other more than this need a larger sheet or scale, not another order. */
    private static final double HOPELESS = 30_000;

    /** What must be gained to move something. */
    private static final double LEAST_GAIN = 1e-6;

    private final Board board;
    private final List<Way> chosen = new ArrayList<>();
    private List<List<Way>> order = List.of();

    private Arranger(Board board) {
        this.board = board;
    }

    /** A way and what it costs whatever else is placed. */
    private record Way(Placing placing, double alone) {}

    /**
     * Places one of each list of ways on a board; a list without any is left out.
     *
     * @return the board with the best outcome, everything that was on the given one first
     */
    static Board place(Board start, List<List<Placing>> all) {
        List<List<Way>> ways = all.stream()
                .filter(list -> !list.isEmpty())
                .map(list -> weighed(start, list))
                .toList();
        Arranger best = new Arranger(start.copy());
        best.arrange(ways);
        if (best.quarrel() > PEACE && best.quarrel() < HOPELESS) {
            List<List<Way>> rightward = rightward(ways);
            for (List<List<Way>> order : List.of(rightward, rightward.reversed(), ways.reversed())) {
                best = better(best, start, order);
            }
            for (int again = 0; again < AGAIN && best.quarrel() > PEACE; again++) {
                best = better(best, start, best.quarrelsomeFirst());
            }
        }
        return best.board;
    }

    private static Arranger better(Arranger best, Board start, List<List<Way>> order) {
        Arranger other = new Arranger(start.copy());
        other.arrange(order);
        return other.total() < best.total() ? other : best;
    }

    /** The lists in the order of how much what was chosen of them costs among the others, the worst first. */
    private List<List<Way>> quarrelsomeFirst() {
        IdentityHashMap<List<Way>, Double> quarrels = new IdentityHashMap<>();
        for (int i = 0; i < chosen.size(); i++) {
            Way way = chosen.get(i);
            board.remove(way.placing);
            quarrels.put(order.get(i), board.among(way.placing, Double.MAX_VALUE));
            board.add(way.placing);
        }
        return order.stream()
                .sorted(Comparator.comparingDouble(list -> -quarrels.getOrDefault(list, 0.0)))
                .toList();
    }

    /** The ways with the least cost of their own first. */
    private static List<Way> weighed(Board board, List<Placing> list) {
        return list.stream()
                .map(placing -> new Way(placing, board.alone(placing)))
                .sorted(Comparator.comparingDouble(Way::alone))
                .toList();
    }

    private static List<List<Way>> rightward(List<List<Way>> ways) {
        return ways.stream()
                .sorted(Comparator.comparingDouble(
                        list -> list.getFirst().placing.extent().centre().x()))
                .toList();
    }

    /** Places everything. */
    private void arrange(List<List<Way>> ways) {
        order = ways;
        for (List<Way> list : ways) {
            Way best = best(list);
            board.add(best.placing);
            chosen.add(best);
        }
        boolean moved = true;
        for (int round = 0; moved && round < ROUNDS; round++) {
            moved = improve(ways) || improvePairs(ways);
        }
    }

    /** What the sizes cost each other. */
    private double quarrel() {
        return total() - chosen.stream().mapToDouble(Way::alone).sum();
    }

    private double total() {
        double total = 0;
        for (Way way : chosen) {
            board.remove(way.placing);
            total += cost(way, Double.MAX_VALUE);
            board.add(way.placing);
        }
        return total;
    }

    /** Moves what can be bettered; whether anything moved. */
    private boolean improve(List<List<Way>> ways) {
        boolean moved = false;
        for (int i = 0; i < ways.size(); i++) {
            Way now = chosen.get(i);
            board.remove(now.placing);
            Way best = best(ways.get(i));
            if (cost(best, Double.MAX_VALUE) < cost(now, Double.MAX_VALUE) - LEAST_GAIN) {
                chosen.set(i, best);
                moved = true;
            }
            board.add(chosen.get(i).placing);
        }
        return moved;
    }

    /**
     * Moves two at once that lie badly together, the first where it likes best; one that lies badly among what cannot move, with
     * each of the others. Whether anything moved.
     */
    private boolean improvePairs(List<List<Way>> ways) {
        boolean moved = false;
        boolean few = chosen.stream().filter(this::isStubborn).count() <= FEW;
        for (int i = 0; i < ways.size(); i++) {
            boolean stubborn = few && isStubborn(chosen.get(i));
            for (int j = 0; j < ways.size(); j++) {
                if (i != j && (stubborn || Board.between(chosen.get(i).placing, chosen.get(j).placing) > QUARREL)) {
                    moved |= improvePair(ways, i, j);
                }
            }
        }
        return moved;
    }

    private boolean isStubborn(Way way) {
        board.remove(way.placing);
        double cost = board.among(way.placing, STUBBORN);
        board.add(way.placing);
        return cost >= STUBBORN;
    }

    private boolean improvePair(List<List<Way>> ways, int i, int j) {
        Way first = chosen.get(i);
        Way second = chosen.get(j);
        board.remove(first.placing);
        board.remove(second.placing);
        double now = costOfBoth(first, second);
        Way one = best(ways.get(i));
        board.add(one.placing);
        Way other = best(ways.get(j));
        board.remove(one.placing);
        boolean better = costOfBoth(one, other) < now - LEAST_GAIN;
        chosen.set(i, better ? one : first);
        chosen.set(j, better ? other : second);
        board.add(chosen.get(i).placing);
        board.add(chosen.get(j).placing);
        return better;
    }

    private double costOfBoth(Way one, Way other) {
        return cost(one, Double.MAX_VALUE) + cost(other, Double.MAX_VALUE) + Board.between(one.placing, other.placing);
    }

    private Way best(List<Way> list) {
        Way best = list.getFirst();
        double least = cost(best, Double.MAX_VALUE);
        for (Way way : list) {
            if (way.alone >= least) {
                break;
            }
            double cost = cost(way, least);
            if (cost < least) {
                best = way;
                least = cost;
            }
        }
        return best;
    }

    private double cost(Way way, double enough) {
        return way.alone + board.among(way.placing, enough - way.alone);
    }
}
