package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Looks for a plan with a given number of bars of one kind, or shows that there is none. So many bars leave only so much room
 * and so much worth to lose, which rules out most ways to fill a bar at once; of those that stay, the piece that is in the fewest
 * decides what is tried next.
 */
final class CloseFit {
    private static final long STEPS = 3_000_000;

    private final CutQuestion question;
    private final CloseWays.Found ways;
    private final Effort effort = new Effort(STEPS);
    private final Set<List<Integer>> failed = new HashSet<>();
    private final List<CutBar> bars = new ArrayList<>();
    private final boolean found;

    /**
     * Tries.
     *
     * @param counts how many of each piece
     * @param most the number of bars
     * @param worth of each piece
     */
    CloseFit(CutQuestion question, int[] counts, int most, Worth worth) {
        this.question = question;
        ways = new CloseWays(question, counts, most, worth).found();
        var spare = new Spare(ways.room(), ways.worth());
        found = !spare.isOverdrawn() && fill(counts.clone(), most, spare, ways.ways());
    }

    /** Room (nm) and worth that the bars still to be cut may lose. */
    private record Spare(long room, long worth) {
        boolean isOverdrawn() {
            return room < 0 || worth < 0;
        }

        boolean allows(CloseWay way) {
            return way.room() <= room && way.lost() <= worth;
        }

        Spare less(CloseWay way) {
            return new Spare(room - way.room(), worth - way.lost());
        }
    }

    /** The plan, if one was found. */
    Optional<List<CutBar>> plan() {
        return found ? Optional.of(List.copyOf(bars)) : Optional.empty();
    }

    /** Whether there is no such plan. */
    boolean isRuledOut() {
        return !found && ways.complete() && !effort.isOverspent();
    }

    private boolean fill(int[] left, int most, Spare spare, List<CloseWay> parents) {
        int longest = 0;
        while (longest < left.length && left[longest] == 0) {
            longest++;
        }
        if (longest == left.length) {
            return true;
        }
        if (most == 0 || !failed.add(key(left, most))) {
            return false;
        }
        List<CloseWay> here = parents.stream()
                .filter(way -> spare.allows(way) && way.isWithin(left))
                .toList();
        effort.spend(parents.size());
        // A piece cut earlier than it must be does no harm, so that only bars without room for another need be tried.
        List<CloseWay> full =
                here.stream().filter(way -> way.isFull(left, question)).toList();
        int piece = scarcest(left, full);
        for (CloseWay way : full) {
            if (way.holds(piece) && with(way, left, most, spare, here)) {
                return true;
            }
            if (!effort.spend()) {
                return false;
            }
        }
        return false;
    }

    private boolean with(CloseWay way, int[] left, int most, Spare spare, List<CloseWay> here) {
        way.takeFrom(left, 1);
        bars.add(way.bar(question.kinds().getFirst()));
        if (fill(left, most - 1, spare.less(way), here)) {
            return true;
        }
        bars.removeLast();
        way.takeFrom(left, -1);
        return false;
    }

    private static List<Integer> key(int[] left, int most) {
        return IntStream.concat(Arrays.stream(left), IntStream.of(most)).boxed().toList();
    }

    private static int scarcest(int[] left, List<CloseWay> full) {
        int[] in = new int[left.length];
        for (CloseWay way : full) {
            way.tally(in);
        }
        int scarcest = -1;
        for (int piece = 0; piece < left.length; piece++) {
            if (left[piece] > 0 && (scarcest < 0 || in[piece] < in[scarcest])) {
                scarcest = piece;
            }
        }
        return scarcest;
    }
}
